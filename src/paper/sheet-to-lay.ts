import type { Drawing } from '../drawing/drawing.ts'

/** A sheet as it comes to paper: the same content arranged in one way or another, the best first. */
export type SheetToLay = {
  readonly id: string
  /** What belongs together, such as the pieces of one part, has the same group. */
  readonly group: string
  readonly drawings: readonly [Drawing, ...Drawing[]]
  /** What may be printed in its place when no page holds it; the first that pages hold is. */
  readonly otherwise?: Iterable<SheetInstead>
  /** How it goes over several pages when no page holds it. */
  readonly large?: LargeSheet
}

/** What is laid whole, and what lies beside it or on other pages, each in several shapes. */
export type SheetInstead = {
  readonly drawings: readonly [Drawing, ...Drawing[]]
  readonly beside?: readonly (readonly [Drawing, ...Drawing[]])[]
  /** What all arrangements of `drawings` hold, what is quickest to know first. */
  readonly holds?: readonly Pick<Drawing, 'bounds'>[]
}

/** A sheet that goes over several pages: what is cut into tiles, and what lies beside it wherever a page has room. */
export type LargeSheet = {
  /** What all arrangements of the sheet hold. */
  readonly drawing: Drawing
  /** The same with its lettering where seams can leave it whole, for tiles that would cut some of it. */
  readonly roomier?: Drawing
  /** The same words in several shapes, the best first. */
  readonly beside: readonly [Drawing, ...Drawing[]]
}
