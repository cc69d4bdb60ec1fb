import type { DistanceFrom } from '../finding/face-name.ts'
import type { Source } from '../finding/source.ts'
import type { Located, WrittenLength } from '../yaml/written.ts'

/** Where something lies along one direction of a face: a distance from the side named, or in the middle. */
export type DistancePlan =
  | { readonly kind: 'from-side'; readonly side: DistanceFrom; readonly length: WrittenLength }
  | { readonly kind: 'centre'; readonly source: Source }

/**
 * The distances as given, at most one for each direction of the face: `along` runs left to right on front, back,
 * top and bottom, front to back on the ends, and start to end on a named edge; `across` is the other. A direction
 * left out is absent. `source` is the `at` as a whole, or the cut where there is no `at`.
 */
export type FromSides = {
  readonly kind: 'from-sides'
  readonly along?: DistancePlan
  readonly across?: DistancePlan
  readonly source: Source
}

/** So far from the middle of another cut, toward the side that is named; in a direction left out, level with it. */
export type FromFeature = {
  readonly kind: 'from-feature'
  readonly feature: Located<string>
  readonly along?: TowardPlan
  readonly across?: TowardPlan
  readonly source: Source
}

export type TowardPlan = { readonly toward: DistanceFrom; readonly length: WrittenLength }

/** In the centre of a rounded corner, or of an edge with a name that is an arc. */
export type Concentric = {
  readonly kind: 'concentric'
  readonly with: Located<string>
  readonly source: Source
}

export type PositionPlan = FromSides | FromFeature | Concentric
