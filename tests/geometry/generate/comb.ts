import type { Region } from '../../../src/geometry/shape/contour.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { polygon } from '../../../src/geometry/shape/polygon.ts'

/**
 * A comb of `teeth` upright teeth 3 mm wide and 40 mm high, 3.5 mm apart, on a back 6 mm high that begins at
 * a corner.
 */
export function comb(teeth: number, height = 40, corner: Point = { x: 0, y: 0 }): Region {
  const { x, y } = corner
  const points: Point[] = [{ x, y: y - 6 }]
  const end = x + teeth * 6.5 - 3.5
  points.push({ x: end, y: y - 6 })
  for (let i = teeth - 1; i >= 0; i--) {
    const left = x + i * 6.5
    points.push({ x: left + 3, y: y + height }, { x: left, y: y + height })
    if (i > 0) points.push({ x: left, y }, { x: left - 3.5, y })
  }
  return { outer: polygon(points), holes: [] }
}
