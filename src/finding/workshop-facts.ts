import type { Quantity } from './quantity.ts'

/** What can be wrong with a workshop file beyond what can be wrong with any text. */
export type WorkshopFacts = {
  /** `what` is "the kerf"; a size outside of what such a thing can be. */
  'setting-out-of-range': {
    readonly what: string
    readonly size: Quantity
    readonly least: Quantity
    readonly largest: Quantity
  }
  'not-a-time': { readonly found: string; readonly wanted: string }
  /** Sizes from the larger to the smaller, or by steps that lead nowhere. */
  'steps-backward': { readonly found: string }
}
