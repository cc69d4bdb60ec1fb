import type { Contour } from '../shape/contour.ts'
import type { Point } from '../shape/point.ts'
import { polygon } from '../shape/polygon.ts'

/**
 * The centres of `count` holes spaced evenly on a circle, counter-clockwise, the first at `start` radians from
 * +x. `diameter` of the circle of centres, in millimetres. Neighbours are {@link holeChord} apart.
 *
 * @throws RangeError when `count` is not a whole number above 0, or the diameter not positive
 */
export function holeCircle(centre: Point, diameter: number, count: number, start = 0): readonly Point[] {
  if (!(Number.isInteger(count) && count >= 1)) throw new RangeError('a hole circle has at least one hole')
  if (!(diameter > 0 && diameter < Infinity)) throw new RangeError('a hole circle has a positive diameter')
  return Array.from({ length: count }, (_, i) => {
    const u = spoke(start, i, count)
    return { x: centre.x + (diameter / 2) * u.x, y: centre.y + (diameter / 2) * u.y }
  })
}

/** The straight distance between neighbouring holes of a hole circle, in millimetres: diameter × sin(π/count). */
export function holeChord(diameter: number, count: number): number {
  return count < 2 ? 0 : diameter * Math.sin(Math.PI / count)
}

/**
 * How large a regular polygon is, in millimetres: from its centre to a corner, from flat to flat (twice from
 * its centre to the middle of a side), or along a side.
 */
export type PolygonSize =
  | { readonly corner: number }
  | { readonly acrossFlats: number }
  | { readonly side: number }

/**
 * A regular polygon, counter-clockwise, its first corner at `start` radians from +x.
 *
 * @throws RangeError for fewer than three corners or a size that is not positive
 */
export function regularPolygon(centre: Point, count: number, size: PolygonSize, start = 0): Contour {
  if (!(Number.isInteger(count) && count >= 3)) throw new RangeError('a polygon has at least three corners')
  return polygon(holeCircle(centre, 2 * cornerRadius(count, size), count, start))
}

function cornerRadius(count: number, size: PolygonSize): number {
  const half = Math.PI / count
  if ('corner' in size) return size.corner
  return 'acrossFlats' in size ? size.acrossFlats / 2 / Math.cos(half) : size.side / 2 / Math.sin(half)
}

/** The direction of spoke i of `count`; on the axes exact, so four holes make a true square. */
function spoke(start: number, i: number, count: number): Point {
  if (start === 0 && (4 * i) % count === 0) {
    const quarters: readonly Point[] = [
      { x: 1, y: 0 },
      { x: 0, y: 1 },
      { x: -1, y: 0 },
      { x: 0, y: -1 },
    ]
    return quarters[(4 * i) / count]!
  }
  const angle = start + (2 * Math.PI * i) / count
  return { x: Math.cos(angle), y: Math.sin(angle) }
}
