import type { Region } from '../../../src/geometry/shape/contour.ts'
import { polygon } from '../../../src/geometry/shape/polygon.ts'

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
  return { outer: polygon(corners), holes: [] }
}
