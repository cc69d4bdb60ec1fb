import type { Bounds } from '../../geometry/shape/contour.ts'
import { apply, type Matrix } from '../../geometry/shape/matrix.ts'

/** An upright rectangle under a shift with quarter turns, which leaves it upright. */
export function turnedBox(box: Bounds, matrix: Matrix): Bounds {
  const a = apply(matrix, { x: box.left, y: box.bottom })
  const b = apply(matrix, { x: box.right, y: box.top })
  return {
    left: Math.min(a.x, b.x),
    right: Math.max(a.x, b.x),
    bottom: Math.min(a.y, b.y),
    top: Math.max(a.y, b.y),
  }
}

/** The same with across and along exchanged. */
export function overDiagonal({ left, right, bottom, top }: Bounds): Bounds {
  return { left: bottom, right: top, bottom: left, top: right }
}
