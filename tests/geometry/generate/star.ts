import type { Region } from '../../../src/geometry/shape/contour.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { polygon } from '../../../src/geometry/shape/polygon.ts'
import { solid } from './solid.ts'

/**
 * A star of `points` corners at even angles and radii from `random` (0 to 1), so wild that the offset of most
 * corners meets that of others. The mean distance of two neighbours stays the same whatever their number.
 */
export function randomStar(points: number, random: () => number): Region {
  const radius = (points * 4) / (2 * Math.PI)
  const corners = Array.from({ length: points }, (_, i) => {
    const r = radius + 12 * random()
    const angle = ((i + 0.6 * random()) * 2 * Math.PI) / points
    return { x: r * Math.cos(angle), y: r * Math.sin(angle) }
  })
  return solid(polygon(corners))
}

/** Corners at even angles and any radii: never crosses itself. `radiusAt` gives the radius of corner i. */
export function star(
  corners: number,
  radiusAt: (i: number) => number,
  centre: Point = { x: 0, y: 0 },
): Region {
  const points = Array.from({ length: corners }, (_, i): Point => {
    const angle = (2 * Math.PI * i) / corners
    const radius = radiusAt(i)
    return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) }
  })
  return solid(polygon(points))
}
