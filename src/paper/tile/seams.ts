import { transformBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import { apply, quarterTurns } from '../../geometry/shape/matrix.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { coincident } from '../../number/tolerance.ts'

/**
 * The stretch of a seam that two tiles share, by their places in the list of tiles. On paper `before` lies to the left
 * of `after` or above it; it is cut or folded at the seam and laid over `after`.
 */
export type Seam = {
  readonly before: number
  readonly after: number
  /** The side of `before`, as it lies on its page, that the seam is at. */
  readonly side: 'right' | 'below'
  readonly from: Point
  readonly to: Point
}

/** A shorter stretch holds no match mark. */
export const shortestSeam = 12

/** All seams between cells; `turned` says that the drawing is turned by a quarter on its pages. */
export function seamsBetween(cells: readonly Bounds[], turned: boolean): readonly Seam[] {
  const laid = cells.map(cell => transformBounds(cell, quarterTurns(turned ? 1 : 0)))
  const back = (x: number, y: number): Point => apply(quarterTurns(turned ? 3 : 0), { x, y })
  const seams: Seam[] = []
  laid.forEach((a, before) => {
    laid.forEach((b, after) => {
      if (near(a.right, b.left)) {
        const low = Math.max(a.bottom, b.bottom)
        const high = Math.min(a.top, b.top)
        if (high - low >= shortestSeam)
          seams.push({ before, after, side: 'right', from: back(a.right, low), to: back(a.right, high) })
      }
      if (near(a.bottom, b.top)) {
        const low = Math.max(a.left, b.left)
        const high = Math.min(a.right, b.right)
        if (high - low >= shortestSeam)
          seams.push({ before, after, side: 'below', from: back(low, a.bottom), to: back(high, a.bottom) })
      }
    })
  })
  return seams
}

function near(a: number, b: number): boolean {
  return Math.abs(a - b) <= coincident
}
