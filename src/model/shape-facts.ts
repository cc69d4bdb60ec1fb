import type { Source } from '../finding/source.ts'
import type { Point } from '../geometry/shape/point.ts'
import type { Size } from './size.ts'

/** What is wrong with an outline as it is drawn. Numbers of edges count from 1, in the order of the steps. */
export type OutlineFault = {
  readonly kind: /** The half of a symmetric outline does not end on the axis it began on; `by` is how far it is off. */
    | 'open'
    /** Two edges cross, or touch where they are not neighbours. */
    | 'crossing'
    /** Two edges lie on each other. */
    | 'doubled'
    /** A step that leads to where it begins. */
    | 'no-length'
  /** The edges that it is about, by name or number. */
  readonly edges: readonly string[]
  /** Where, in the part's own millimetres. */
  readonly at?: Point
  readonly by?: number
  readonly source: Source
}

/** The outline is larger or smaller than the size that stands beside it, in millimetres. */
export type SizeDiffers = {
  readonly direction: 'length' | 'width'
  readonly stated: Size
  readonly drawn: number
}

/** A part that narrows, with all that the drawing says of it; angles in radians. */
export type TaperFacts = {
  readonly left?: Size
  readonly right?: Size
  readonly angle?: { readonly radians: number; readonly written: string; readonly source: Source }
  /** Which widths the angle and the length would give, where both widths and the angle are given. */
  readonly disagreement?: {
    readonly drawnAngle: number
    readonly statedAngle: number
    readonly widthByAngle: number
  }
}

/** A rounded or chamfered corner. */
export type MadeCorner = { readonly name: string; readonly kind: 'round' | 'chamfer'; readonly size: Size }
