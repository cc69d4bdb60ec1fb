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

type Faces = readonly [Located<FaceName>, ...Located<FaceName>[]]

/** What is cut into a face: the same on each face named. */
type OnFaces = CutBase & {
  readonly on: Faces
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

/** What is worked along a face or an edge, and where it stops short of the ends; no stop: from end to end. */
type Run = {
  /** How far it stops short of an end. */
  readonly stopped: readonly { readonly side: Located<DistanceFrom>; readonly distance: WrittenLength }[]
  /** How long it is from its one stop. */
  readonly length?: WrittenLength
}

/** A channel with a flat floor along a face; `at` is the place of its near side. */
export type GroovePlan = CutBase &
  Run & {
    readonly kind: 'groove'
    readonly on: Faces
    /** Which of the face's two directions it runs in. */
    readonly runs: 'along' | 'across'
    readonly at?: DistancePlan
    readonly width: WrittenLength
    readonly depth: WrittenLength
  }

/** A step out of the arris between a face and one of its edges: so wide on the face, so deep into it. */
export type RebatePlan = CutBase &
  Run & {
    readonly kind: 'rebate'
    readonly on: Faces
    readonly edge: Located<FaceName>
    readonly width: WrittenLength
    readonly depth: WrittenLength
  }

/** An end or edge out of square to the face; `angle` counts from square, and the part is shorter on `short`. */
export type BevelPlan = CutBase & {
  readonly kind: 'bevel'
  readonly on: Faces
  readonly angle: WrittenAngle
  readonly short: Located<'front' | 'back'>
}

/** The arrises of a face that are eased; `all`: all round, inside edges too. */
type Arrises = CutBase & {
  readonly on: Faces
  readonly edges: 'all' | readonly Located<FaceName>[]
}

/** Cut off aslant, so wide on the face and so deep down the edge. */
export type ChamferPlan = Arrises & {
  readonly kind: 'chamfer'
  readonly width: WrittenLength
  readonly depth: WrittenLength
}

/** Rounded by a quarter circle. */
export type RoundOverPlan = Arrises & { readonly kind: 'round-over'; readonly radius: WrittenLength }

/** Lines or letters worked into a face, so deep that they show. */
export type EngravePlan = CutBase & {
  readonly kind: 'engrave'
  readonly on: Faces
  readonly drawing:
    | {
        readonly kind: 'text'
        readonly text: Located<string>
        /** Of a capital letter. */
        readonly height: WrittenLength
        readonly at: FromSides
      }
    /** Each line from point to point; one that comes back to where it began is closed. */
    | {
        readonly kind: 'lines'
        readonly lines: readonly (readonly DrawnPoint[])[]
        /** Absent: the points count from the face's own lower left corner. */
        readonly at?: PositionPlan
      }
  readonly depth?: WrittenLength
}

/** So far to the right and up, as the face is seen. */
export type DrawnPoint = { readonly x: WrittenLength; readonly y: WrittenLength; readonly source: Source }

export type CutPlan =
  | HolePlan
  | RowPlan
  | GridPlan
  | HoleCirclePlan
  | SlotPlan
  | NotchPlan
  | CutOutPlan
  | GroovePlan
  | RebatePlan
  | BevelPlan
  | ChamferPlan
  | RoundOverPlan
  | EngravePlan
