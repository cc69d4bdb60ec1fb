import type { Contour, Region } from '../../../src/geometry/shape/contour.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { sweep } from '../../../src/geometry/shape/segment.ts'
import { bulgeChain } from './bulge.ts'

/**
 * A closed contour with every corner moved by up to `size` in x and y, arcs keeping their bend: edges that
 * coincided, were parallel or tangent are so only nearly, as in a drawing with rounded coordinates.
 */
export function jitterContour(contour: Contour, size: number, random: () => number): Contour {
  const points = contour.segments.map(
    ({ from }): Point => ({ x: from.x + size * (2 * random() - 1), y: from.y + size * (2 * random() - 1) }),
  )
  const bulges = contour.segments.map(s => (s.kind === 'line' ? 0 : Math.tan(sweep(s) / 4)))
  return { segments: bulgeChain(points, bulges, true), closed: true }
}

export function jitterRegion(region: Region, size: number, random: () => number): Region {
  return {
    outer: jitterContour(region.outer, size, random),
    holes: region.holes.map(h => jitterContour(h, size, random)),
  }
}
