import type { Source } from '../finding/source.ts'
import type { Located, WrittenAngle, WrittenLength } from '../yaml/written.ts'
import type { CornerPlan } from './corner-plan.ts'
import type { DistancePlan } from './position-plan.ts'

/** `[x, y]` is a distance from the left end and one from the bottom edge; `{ right: 1, top: 1/2 }` names its sides. */
export type OutlinePoint = {
  readonly along: DistancePlan
  readonly across: DistancePlan
  readonly source: Source
}

/** How a step reaches its point from the one before. */
export type StepShape =
  | { readonly kind: 'line'; readonly to: OutlinePoint }
  /** The lesser of the two arcs. Left is anticlockwise. */
  | {
      readonly kind: 'arc-by-radius'
      readonly to: OutlinePoint
      readonly radius: WrittenLength
      readonly turn: Located<'left' | 'right'>
    }
  | { readonly kind: 'arc-through'; readonly to: OutlinePoint; readonly through: OutlinePoint }
  /** Turns by so much on its way, positive to the left. */
  | { readonly kind: 'arc-by-bend'; readonly to: OutlinePoint; readonly bend: WrittenAngle }
  /** Goes on in the direction in which the step before it ended. */
  | { readonly kind: 'arc-tangent'; readonly to: OutlinePoint }
  /** A smooth curve through all of the points. */
  | { readonly kind: 'curve'; readonly points: readonly OutlinePoint[] }

export type OutlineStep = StepShape & {
  /** The name of the edge that arrives here; at the first step, of the edge that closes the outline. */
  readonly name?: Located<string>
  /** How the corner at the end of this step is made. */
  readonly corner?: CornerPlan
  /** The name of the edge that a rounded or chamfered corner becomes. */
  readonly cornerName?: Located<string>
  readonly source: Source
}

/** Round the part, in either direction; the last point leads back to the first. */
export type OutlinePlan = {
  readonly steps: readonly [OutlineStep, ...OutlineStep[]]
  /** The steps are one half, from a point on the axis to another one; the other half is its mirror image. */
  readonly symmetric?: Located<'left-right' | 'top-bottom'>
  readonly source: Source
}
