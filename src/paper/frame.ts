import type { Paper } from '../drawing/page.ts'
import type { Bounds } from '../geometry/shape/contour.ts'
import type { Workshop } from '../workshop/workshop.ts'

/** How a page is divided, in its own millimetres: where the drawing may lie, and the strips for what every page carries. */
export type Frame = {
  readonly paper: Paper
  readonly body: Bounds
  /** Title, part, page number. */
  readonly head: Bounds
  /** The scale bar across and a line of cautions. */
  readonly foot: Bounds
  /** The scale bar along. */
  readonly side: Bounds
}

/** Heights of the strips; furniture is drawn to fit them, so they change together. */
const headHeights = {
  whole: 13,
  /** A page that shows a part of a drawing has the map of its pages there, and a line on how they are joined. */
  tile: 19,
} as const
const footHeight = 19
const sideWidth = 11
/** White between a strip and the body. */
const gap = 3

export function frameOf(
  paper: Paper,
  { printer: { margin } }: Pick<Workshop, 'printer'>,
  shows: 'whole' | 'tile' = 'whole',
): Frame {
  const left = margin.left
  const right = paper.width - margin.right
  const top = paper.height - margin.top
  const bottom = margin.bottom
  const headHeight = headHeights[shows]
  return {
    paper,
    head: { left, right, top, bottom: top - headHeight },
    foot: { left, right, top: bottom + footHeight, bottom },
    side: { left, right: left + sideWidth, top: top - headHeight - gap, bottom: bottom + footHeight + gap },
    body: {
      left: left + sideWidth + gap,
      right,
      top: top - headHeight - gap,
      bottom: bottom + footHeight + gap,
    },
  }
}
