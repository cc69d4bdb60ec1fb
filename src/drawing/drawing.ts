import type { Bounds, Region } from '../geometry/shape/contour.ts'
import type { Mark } from './mark.ts'

/** What a drawing shows, in words, for the page that carries it. */
export type Caption = {
  /** The plan's title. */
  readonly plan: string
  /** The kind of sheet: "template". */
  readonly sheet: string
  /** The part's label, absent where the sheet is about the whole plan. */
  readonly part?: string
  /** The pieces it serves: "2 pieces, 1 drawn and 1 mirrored". */
  readonly pieces?: string
}

/** A true-size drawing in millimetres, y up; it knows neither the plan it came from nor the format it goes to. */
export type Drawing = {
  /** Readable and unique within a run: "side-frame/1-template". */
  readonly id: string
  readonly caption: Caption
  /**
   * The picture in words, for somebody who cannot see it: "outline 175 x 33 mm with two holes". The caption comes
   * before it; without it the caption has to do.
   */
  readonly description?: string
  readonly marks: readonly Mark[]
  /** The rectangle that everything in `marks` lies in, text included. */
  readonly bounds: Bounds
  /** Boxes that a seam between pages may not cross. */
  readonly keepWhole: readonly Region[]
}
