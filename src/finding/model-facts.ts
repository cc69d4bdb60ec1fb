import type { Quantity } from './quantity.ts'

/** What can be wrong with the values of a plan that reads well: there is no model where one of these is found. */
export type ModelFacts = {
  /** A formula that comes to nothing: an unknown name, a division by zero, a length times a length. */
  'size-formula': { readonly found: string; readonly wanted: string; readonly nearest?: string }
  /** Zero or less where something must have a size. `what` is "the diameter". */
  'size-not-positive': { readonly what: string; readonly size: Quantity }
  /** Beyond what anybody makes of wood. */
  'size-too-large': { readonly what: string; readonly size: Quantity; readonly largest: Quantity }
  /** An angle that no tool makes. `what` is "the lean"; both limits are excluded. */
  'angle-out-of-range': {
    readonly what: string
    readonly angle: Quantity
    readonly above: Quantity
    readonly below: Quantity
  }
  /** A counterbore or countersink that is no wider than its hole. */
  'mouth-too-narrow': { readonly what: string; readonly mouth: Quantity; readonly hole: Quantity }
  /** One that goes as deep as the hole or the part. */
  'mouth-too-deep': {
    readonly what: string
    readonly depth: Quantity
    readonly available: Quantity
    readonly of: string
  }
  /** A counterbore that leans so far that its floor comes out of the face. */
  'mouth-too-shallow': { readonly depth: Quantity; readonly least: Quantity }
  'unknown-stock': { readonly found: string; readonly nearest?: string; readonly allowed: string }
  'thickness-missing': Record<string, never>
  /** Corners that do not fit the rectangle they are cut from. */
  'corners-too-large': { readonly edge: string; readonly corners: Quantity; readonly available: Quantity }
  /** A row that leads out of its face: `toward` names a side that the face does not run to. */
  'row-direction': { readonly found: string; readonly allowed: string }
  /** The steps that the plan wants sizes shown in cannot be used. */
  'precision-unusable': { readonly found: string; readonly wanted: string }
}

/** Names that lead nowhere, or to something that does not serve. */
export type ReferenceFacts = {
  /** `within` is the part. */
  'unknown-cut': {
    readonly found: string
    readonly within: string
    readonly nearest?: string
    readonly allowed: string
  }
  'unknown-pin': { readonly found: string; readonly nearest?: string; readonly allowed: string }
  /** `on: foot`, and no straight edge of the outline has that name. */
  'unknown-edge': { readonly found: string; readonly nearest?: string; readonly allowed: string }
  /** `concentric: top-left`, and no arc has that name. */
  'unknown-arc': { readonly found: string; readonly nearest?: string; readonly allowed: string }
  'unknown-piece': { readonly found: string; readonly part: string; readonly pieces: Quantity }
  /** The fifth hole of a row of four. */
  'unknown-member': { readonly found: string; readonly row: string; readonly count: Quantity }
  'unknown-confirmed': { readonly found: string; readonly nearest?: string; readonly allowed: string }
  /** Cuts that are placed from each other in a ring. */
  'place-cycle': { readonly chain: string }
  /** Placed from a cut that lies on a face that runs another way. */
  'from-other-face': { readonly cut: string; readonly face: string; readonly wanted: string }
  /** A pin through a slot, a tongue into a hole. `wanted` is what would serve. */
  'no-joint': { readonly found: string; readonly wanted: string }
}

/** Shapes that cannot be drawn. */
export type ShapeFacts = {
  /** `[x, y]` alone places a point where the part has no size; `right` or `top` does not. */
  'outline-needs-size': { readonly side: string }
  /** The radius is less than half the way between the ends of the arc. */
  'arc-radius-too-small': { readonly radius: Quantity; readonly least: Quantity }
  /** `why` is `in-line`, `flat`, `full-turn`, `no-direction` or `no-chord`. */
  'arc-impossible': { readonly why: string }
  /** No room for the radius or chamfer of a corner of an outline; `why` is `smooth` where there is no corner. */
  'corner-no-room': { readonly corner: string; readonly why: string; readonly size: Quantity }
  /** The points of a curve stand on each other. */
  'curve-impossible': { readonly points: Quantity }
  /** Two faces that have no arris in common to work along: `why` says what they have instead. */
  'no-arris': {
    readonly face: string
    readonly edge: string
    readonly why: 'apart' | 'corner' | 'all'
  }
  /** An end or edge that is curved, or not there, so that nothing is worked along it. */
  'no-straight-edge': { readonly edge: string }
  /** A groove or rebate whose stops meet. */
  'nothing-to-run-in': { readonly stops: Quantity; readonly available: Quantity }
  /** A ring of which nothing is left, or a taper that comes to a point before the end. */
  'nothing-left': { readonly what: string; readonly size: Quantity; readonly limit: Quantity }
}
