import type { Quantity } from './quantity.ts'

/** What can be wrong with the values of a plan that reads well: there is no model where one of these is found. */
export type ModelFacts = {
  /** A formula that comes to nothing: an unknown name, a division by zero, a length times a length. */
  'size-formula': { readonly found: string; readonly wanted: string; readonly nearest?: string }
  /** Zero or less where something must have a size. `what` is "the diameter". */
  'size-not-positive': { readonly what: string; readonly size: Quantity }
  /** Beyond what anybody makes of wood. */
  'size-too-large': { readonly what: string; readonly size: Quantity; readonly largest: Quantity }
  'unknown-stock': { readonly found: string; readonly nearest?: string; readonly allowed: string }
  'thickness-missing': Record<string, never>
  /** Corners that do not fit the rectangle they are cut from. */
  'corners-too-large': { readonly edge: string; readonly corners: Quantity; readonly available: Quantity }
  /** A row that leads out of its face: `toward` names a side that the face does not run to. */
  'row-direction': { readonly found: string; readonly allowed: string }
}
