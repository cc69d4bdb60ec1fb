import type { Contour } from './contour.ts'
import type { Point } from './point.ts'
import { arcOf } from './segment.ts'

/**
 * A whole circle as two half arcs, counter-clockwise from its rightmost point. `radius` in millimetres.
 *
 * @throws RangeError when `radius` is not a positive number: a fault of the caller
 */
export function circle(centre: Point, radius: number, tag?: string): Contour {
  if (!(radius > 0 && radius < Infinity)) throw new RangeError('a circle has a positive radius')
  const right = { x: centre.x + radius, y: centre.y }
  const left = { x: centre.x - radius, y: centre.y }
  // the radius as given, not as the rounded ends would have it
  return {
    segments: [arcOf(right, left, centre, radius, 1, tag), arcOf(left, right, centre, radius, 1, tag)],
    closed: true,
  }
}
