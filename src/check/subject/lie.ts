import { enclosingRectangle } from '../../geometry/measure/enclosing-rectangle.ts'
import type { Part } from '../../model/part.ts'

/** How a part lies in its board: along the grain, which runs along its longest dimension, and across it. */
export type Lie = {
  readonly along: number
  readonly across: number
  /** The direction of the grain on the front, in radians, counter-clockwise from the part's length. */
  readonly grain: number
}

/** The part as it is drawn, upright: its longer side lies along the grain. */
export function uprightLie({ length, width }: Part): Lie {
  return length.mm >= width.mm
    ? { along: length.mm, across: width.mm, grain: 0 }
    : { along: width.mm, across: length.mm, grain: Math.PI / 2 }
}

/** The part in the smallest rectangle round it: a brace that is drawn leaning is cut from a narrow board. */
export function bestLie(part: Part): Lie {
  const around = part.shape === 'outline' ? enclosingRectangle([part.drawn.outline.outer]) : undefined
  if (around === undefined) return uprightLie(part)
  const { width, height, angle } = around
  return width >= height
    ? { along: width, across: height, grain: angle }
    : { along: height, across: width, grain: angle + Math.PI / 2 }
}
