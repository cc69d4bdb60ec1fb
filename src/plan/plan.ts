import type { Side } from '../finding/side.ts'
import type { Source } from '../finding/source.ts'
import type { Unit } from '../length/unit.ts'
import type { WrittenSize } from '../length/written-size.ts'

/**
 * A plan as it was written: every key known and of the right kind, every size parsed and none calculated, and
 * each with the place where it stands. What the sizes come to is the model's business.
 */
export type Plan = {
  readonly file: string
  readonly version: 1
  readonly title: Located<string>
  readonly units: Unit
  /** The steps that sizes are shown in, for inches 1/64 and the like, for millimetres 0.1 and the like. */
  readonly precision: WrittenLength
  readonly names: readonly NamedSize[]
  readonly stock: readonly StockPlan[]
  readonly parts: readonly PartPlan[]
}

export type Located<T> = { readonly value: T; readonly source: Source }

/** A size with the place where it stands; `source` covers the size's own characters. */
export type WrittenLength = { readonly size: WrittenSize; readonly source: Source }

/** An entry of `let`. */
export type NamedSize = { readonly name: Located<string>; readonly length: WrittenLength }

export type StockPlan = {
  readonly id: Located<string>
  readonly label?: Located<string>
  readonly thickness: WrittenLength
  readonly width?: WrittenLength
  readonly length?: WrittenLength
  readonly count?: Located<number>
  readonly wood?: Located<string>
}

export type PartPlan = {
  readonly id: Located<string>
  readonly label?: Located<string>
  readonly note?: Located<string>
  /** How many pieces are wanted, 1 unless said. */
  readonly make: Located<number>
  /** An even number of pieces, the first half as drawn and the second half mirrored left for right. */
  readonly mirrored: boolean
  /** The stock it is cut from. */
  readonly from?: Located<string>
  readonly size: PartSize
  readonly corners: CornersPlan
  readonly faceEdge: Located<'top' | 'bottom'>
  readonly referenceEnd: Located<'left' | 'right'>
  readonly cuts: readonly CutPlan[]
  readonly source: Source
}

/** Length x width, and thickness unless the stock gives it. */
export type PartSize = {
  readonly length: WrittenLength
  readonly width: WrittenLength
  readonly thickness?: WrittenLength
  readonly source: Source
}

export const cornerNames = ['bottom-left', 'bottom-right', 'top-right', 'top-left'] as const
export type CornerName = (typeof cornerNames)[number]

/** A corner that is not square: `1/4` or `{ round: 1/4 }`, or `{ chamfer: 1/8 }` measured along both edges. */
export type CornerPlan = { readonly kind: 'round' | 'chamfer'; readonly length: WrittenLength }

/** The corners that are not square. One value for all stands at each of the four. */
export type CornersPlan = { readonly [C in CornerName]?: CornerPlan }

/** Where something lies along one direction of a face: a distance from the side named, or in the middle. */
export type DistancePlan =
  | { readonly kind: 'from-side'; readonly side: Side; readonly length: WrittenLength }
  | { readonly kind: 'centre'; readonly source: Source }

/**
 * The distances as given, at most one for each direction of the face: `along` runs left to right on front, back,
 * top and bottom and front to back on the ends; `across` is the other. A direction left out is absent.
 */
export type PositionPlan = {
  readonly along?: DistancePlan
  readonly across?: DistancePlan
  /** The `at` as a whole, or the cut where there is no `at`. */
  readonly source: Source
}

type CutBase = {
  readonly id: Located<string>
  readonly on: Located<Side>
  readonly at: PositionPlan
  readonly note?: Located<string>
  readonly source: Source
}

/** `depth` absent: through. */
export type HolePlan = CutBase & {
  readonly kind: 'hole'
  readonly diameter: WrittenLength
  readonly depth?: WrittenLength
}

/** Holes in a line, the first at `at`, the others `spacing` apart. */
export type RowPlan = CutBase & {
  readonly kind: 'row'
  readonly toward: Located<Side>
  readonly spacing: WrittenLength
  readonly count: Located<number>
  readonly diameter: WrittenLength
  readonly depth?: WrittenLength
}

/** Along the length x across it; `depth` absent: through, else a mortise. `at` leads to the near sides. */
export type SlotPlan = CutBase & {
  readonly kind: 'slot'
  readonly along: WrittenLength
  readonly across: WrittenLength
  readonly ends: Located<'square' | 'round'>
  readonly depth?: WrittenLength
}

/** Out of an edge or end: along the edge x into the part, through the thickness. `on` is the edge or end. */
export type NotchPlan = CutBase & {
  readonly kind: 'notch'
  readonly along: WrittenLength
  readonly into: WrittenLength
}

export type CutPlan = HolePlan | RowPlan | SlotPlan | NotchPlan
