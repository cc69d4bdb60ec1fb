import type { Bounds } from '../../geometry/shape/contour.ts'

/** The same rectangle with across and along exchanged. */
export function overDiagonal({ left, right, bottom, top }: Bounds): Bounds {
  return { left: bottom, right: top, bottom: left, top: right }
}
