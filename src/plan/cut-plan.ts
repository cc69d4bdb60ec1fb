import type { DistanceFrom, FaceName } from '../finding/face-name.ts'
import type { Source } from '../finding/source.ts'
import type { Located, WrittenAngle, WrittenLength } from '../yaml/written.ts'
import type { CornersPlan } from './corner-plan.ts'
import type { FitPlan } from './fit-plan.ts'
import type { OutlinePlan } from './outline-plan.ts'
import type { DistancePlan, FromSides, PositionPlan } from './position-plan.ts'

type CutBase = {
  /** The maker's name for it, or one like hole-2 where the plan gives none. */
  readonly id: Located<string>
  readonly label?: Located<string>
  readonly note?: Located<string>
  /** The page of the paper drawing that shows it. */
  readonly page?: Located<string>
  readonly source: Source
}

/** What is cut into a face: the same on each face named. */
type OnFaces = CutBase & {
  readonly on: readonly [Located<FaceName>, ...Located<FaceName>[]]
  readonly at: PositionPlan
}

/** How wide a hole is: as the plan says, or as the pin that goes into it asks for. */
export type BorePlan =
  | { readonly kind: 'diameter'; readonly diameter: WrittenLength }
  | { readonly kind: 'for-pin'; readonly pin: Located<string>; readonly fit: FitPlan }

/** A lean as it is written: a rod that stands in the hole leans so far out of the square toward this side. */
export type LeanPlan = {
  readonly toward: Located<DistanceFrom>
  readonly angle: WrittenAngle
  readonly source: Source
}

/** What widens a hole where it enters. A countersink without an angle has the one usual in the plan's units. */
export type MouthPlan =
  | {
      readonly kind: 'counterbore'
      readonly diameter: WrittenLength
      readonly depth: WrittenLength
      readonly source: Source
    }
  | {
      readonly kind: 'countersink'
      readonly diameter: WrittenLength
      readonly angle?: WrittenAngle
      readonly source: Source
    }

/** What the bit ends in; `angle` is that of a twist drill's point. */
export type BitPlan = { readonly point: Located<'twist' | 'brad' | 'flat'>; readonly angle?: WrittenAngle }

/** How a hole is bored. `depth` absent: through. Two leans are in different directions of the face. */
export type BoredPlan = {
  readonly bore: BorePlan
  readonly depth?: WrittenLength
  readonly leans: readonly LeanPlan[]
  readonly mouth?: MouthPlan
  readonly bit?: BitPlan
}

type Bored = OnFaces & BoredPlan

export type HolePlan = Bored & { readonly kind: 'hole' }

/** Holes in a line, the first at `at`; the others so far apart, or spread evenly as far as the last. */
export type RowPlan = Bored & {
  readonly kind: 'row'
  readonly count: Located<number>
  readonly run:
    | { readonly kind: 'spacing'; readonly toward: Located<DistanceFrom>; readonly spacing: WrittenLength }
    | { readonly kind: 'last'; readonly last: FromSides }
}

/** Rows of holes, the nearest to the sides that `at` names at `at`; in a direction that is centred, all of it is. */
export type GridPlan = Bored & {
  readonly kind: 'grid'
  readonly spacing: readonly [along: WrittenLength, across: WrittenLength]
  readonly count: readonly [along: Located<number>, across: Located<number>]
}

/** Holes spaced evenly on a circle about `at`, anticlockwise, the first at `start` (from the right, which is 0). */
export type HoleCirclePlan = Bored & {
  readonly kind: 'hole-circle'
  /** The diameter of the circle that the centres lie on. */
  readonly circle: WrittenLength
  readonly count: Located<number>
  readonly start?: WrittenAngle
}

/**
 * Along the length x across it; `depth` absent: through, else a mortise. `at` leads to the near sides. `angle` turns
 * it about its middle.
 */
export type SlotPlan = OnFaces & {
  readonly kind: 'slot'
  readonly along: WrittenLength
  readonly across: WrittenLength
  readonly ends: Located<'square' | 'round'>
  readonly angle?: WrittenAngle
  readonly depth?: WrittenLength
}

/** Out of an edge or end: along the edge x into the part, through the thickness; `at` is the place along the edge. */
export type NotchPlan = CutBase & {
  readonly kind: 'notch'
  readonly edge: Located<'bottom' | 'top' | 'left' | 'right'>
  readonly at?: DistancePlan
  readonly along: WrittenLength
  readonly into: WrittenLength
}

/** A piece sawn out of the inside, through the thickness. */
export type CutOutPlan = OnFaces & {
  readonly kind: 'cut-out'
  readonly shape:
    | {
        readonly kind: 'rectangle'
        readonly along: WrittenLength
        readonly across: WrittenLength
        readonly corners: CornersPlan
      }
    | { readonly kind: 'disc'; readonly diameter: WrittenLength }
    /** `placed`: its points say where it is; else `at` leads to the near sides of the rectangle round it. */
    | { readonly kind: 'outline'; readonly outline: OutlinePlan; readonly placed: boolean }
  /** The hole that the saw's blade goes in by; where the plan is silent, one in the waste. */
  readonly entry?: EntryPlan
}

export type EntryPlan = {
  readonly at?: FromSides
  readonly bit?: WrittenLength
  readonly source: Source
}

export type CutPlan = HolePlan | RowPlan | GridPlan | HoleCirclePlan | SlotPlan | NotchPlan | CutOutPlan
