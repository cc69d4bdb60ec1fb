import type { Contour } from '../../../src/geometry/shape/contour.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { bulgeChain } from './bulge.ts'
import { pick, whole } from './random.ts'

/** An open path of lines and arcs that wanders and crosses itself freely. */
export function wanderingPath(random: () => number, edges: number, bend: number): Contour {
  const points = Array.from({ length: edges + 1 }, (): Point => ({ x: 20 * random(), y: 20 * random() }))
  const bulges = points.map(() => (random() < 0.5 ? 0 : bend * (2 * random() - 1)))
  return { segments: bulgeChain(points, bulges, false), closed: false }
}

/** An open path along the lines of a grid, never straight back: edges in one line, parallel, and run twice. */
export function gridPath(random: () => number, edges: number, cell: number): Contour {
  const points: Point[] = [{ x: 0, y: 0 }]
  const ways = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ] as const
  let way = 0
  for (let i = 0; i < edges; i++) {
    way = (way + pick(random, [0, 1, 3])) % 4
    const steps = whole(random, 1, 3)
    const [dx, dy] = ways[way]!
    const last = points[points.length - 1]!
    points.push({ x: last.x + dx * steps * cell, y: last.y + dy * steps * cell })
  }
  return {
    segments: bulgeChain(
      points,
      points.map(() => 0),
      false,
    ),
    closed: false,
  }
}

/** A spiral of half circles, each tangent to the one before, `gap` apart from turn to turn. */
export function spiralPath(halves: number, gap: number): Contour {
  const points: Point[] = [{ x: 0, y: 0 }]
  let side = 1
  let width = gap
  for (let i = 0; i < halves; i++) {
    const last = points[points.length - 1]!
    points.push({ x: last.x + side * width, y: 0 })
    side = -side
    width += gap
  }
  return {
    segments: bulgeChain(
      points,
      points.map(() => 1),
      false,
    ),
    closed: false,
  }
}
