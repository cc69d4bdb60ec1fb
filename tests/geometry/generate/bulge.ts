import type { Point } from '../../../src/geometry/shape/point.ts'
import { line, type Segment } from '../../../src/geometry/shape/segment.ts'

/**
 * The edge from one point to another whose bend is given as tan(sweep/4), positive counter-clockwise; a line
 * for 0. Source: the usual definition of a polyline's bulge.
 */
export function bulgeEdge(from: Point, to: Point, bulge: number, tag?: string): Segment {
  if (bulge === 0) return line(from, to, tag)
  const dx = to.x - from.x
  const dy = to.y - from.y
  // distance of the centre from the chord, to its left, in chords
  const aside = (1 - bulge * bulge) / (4 * bulge)
  const centre = { x: (from.x + to.x) / 2 - aside * dy, y: (from.y + to.y) / 2 + aside * dx }
  const radius = Math.hypot(from.x - centre.x, from.y - centre.y)
  const plain = { kind: 'arc', from, to, centre, radius, turn: bulge > 0 ? 1 : -1 } as const
  return tag === undefined ? plain : { ...plain, tag }
}

/** A chain through points with a bulge for every edge. */
export function bulgeChain(points: readonly Point[], bulges: readonly number[], closed: boolean): Segment[] {
  const count = closed ? points.length : points.length - 1
  return Array.from({ length: count }, (_, i) =>
    bulgeEdge(points[i]!, points[(i + 1) % points.length]!, bulges[i]!, `edge ${i}`),
  )
}
