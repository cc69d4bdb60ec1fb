import type { Drawing } from '../drawing/drawing.ts'
import type { Model } from '../model/part.ts'
import type { Fonts } from '../text/fonts.ts'
import type { Workshop } from '../workshop/workshop.ts'

/**
 * What one sheet shows, drawn in one or more arrangements, the best first: the same marks at true size, with what
 * stands beside them moved so that it fits another shape of paper.
 */
export type Sheet = {
  /** Unique within a run: "side-frame-template-mirrored". */
  readonly id: string
  readonly kind: string
  /** The part that it is about. */
  readonly part: string
  readonly drawings: readonly [Drawing, ...Drawing[]]
}

export type SheetContext = { readonly model: Model; readonly workshop: Workshop; readonly fonts: Fonts }

/** Draws all sheets of one kind, in the order of the plan's parts. */
export type SheetMaker = (context: SheetContext) => readonly Sheet[]
