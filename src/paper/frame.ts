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
const headHeight = 13
const footHeight = 19
const sideWidth = 11
/** White between a strip and the body. */
const gap = 3

export function frameOf(paper: Paper, { printer: { margin } }: Workshop): Frame {
  const left = margin.left
  const right = paper.width - margin.right
  const top = paper.height - margin.top
  const bottom = margin.bottom
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
