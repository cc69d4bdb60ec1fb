import type { Region } from '../../../src/geometry/shape/contour.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { polygon } from '../../../src/geometry/shape/polygon.ts'

/** A comb of `teeth` upright teeth 3 mm wide and 40 mm high, 3.5 mm apart, on a back 6 mm high. */
export function comb(teeth: number, height = 40): Region {
  const points: Point[] = [{ x: 0, y: -6 }]
  const end = teeth * 6.5 - 3.5
  points.push({ x: end, y: -6 })
  for (let i = teeth - 1; i >= 0; i--) {
    const left = i * 6.5
    points.push({ x: left + 3, y: height }, { x: left, y: height })
    if (i > 0) points.push({ x: left, y: 0 }, { x: left - 3.5, y: 0 })
  }
  return { outer: polygon(points), holes: [] }
}
