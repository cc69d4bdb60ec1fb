import { orientation } from '../../number/predicates.ts'
import type { Point } from '../shape/point.ts'
import type { Arc, Line, Segment } from '../shape/segment.ts'
import { spans } from '../shape/span.ts'
import { circleCircleCrossings, lineCircleCrossings, lineLineCrossing } from './carrier.ts'
import { nearestOnSegment } from './nearest.ts'

/** How far two edges are apart, in millimetres, and the two points where they come nearest. */
export type PointPair = { readonly distance: number; readonly first: Point; readonly second: Point }

/**
 * The shortest way between two edges; 0 and a common point when they cross or touch. Of several shortest ways
 * one is given.
 */
export function segmentDistance(a: Segment, b: Segment): PointPair {
  const common = commonPoint(a, b)
  if (common !== undefined) return { distance: 0, first: common, second: common }
  let best: PointPair = { distance: Infinity, first: a.from, second: b.from }
  // the shortest way leaves an edge at one of its ends or at right angles, and there are few such places
  for (const first of leavings(a, b)) {
    const { point, distance } = nearestOnSegment(b, first)
    if (distance < best.distance) best = { distance, first, second: point }
  }
  for (const second of leavings(b, a)) {
    const { point, distance } = nearestOnSegment(a, second)
    if (distance < best.distance) best = { distance, first: point, second }
  }
  return best
}

/** The points of `s` where the shortest way to `other` can leave it, as far as they follow from `s` alone. */
function leavings(s: Segment, other: Segment): readonly Point[] {
  const ends = [s.from, s.to]
  if (s.kind === 'arc') {
    const { centre, radius } = s
    if (other.kind === 'line') return ends
    const dx = other.centre.x - centre.x
    const dy = other.centre.y - centre.y
    const apart = Math.hypot(dx, dy)
    if (apart === 0) return ends
    const x = (dx / apart) * radius
    const y = (dy / apart) * radius
    const across = [
      { x: centre.x + x, y: centre.y + y },
      { x: centre.x - x, y: centre.y - y },
    ]
    return [...ends, ...across.filter(p => spans(s, p))]
  }
  return other.kind === 'arc' ? [...ends, nearestOnSegment(s, other.centre).point] : ends
}

function commonPoint(a: Segment, b: Segment): Point | undefined {
  if (a.kind === 'line') return b.kind === 'line' ? lineLine(a, b) : lineArc(a, b)
  if (b.kind === 'line') return lineArc(b, a)
  return circleCircleCrossings(a, b).find(p => spans(a, p) && spans(b, p))
}

function lineLine(a: Line, b: Line): Point | undefined {
  const bFrom = orientation(a.from, a.to, b.from)
  const bTo = orientation(a.from, a.to, b.to)
  const aFrom = orientation(b.from, b.to, a.from)
  const aTo = orientation(b.from, b.to, a.to)
  // in one line, or an end on the other: the ends are measured anyway
  if (bFrom > 0 === bTo > 0 || aFrom > 0 === aTo > 0) return undefined
  return lineLineCrossing(a.from, a.to, b.from, b.to)
}

function lineArc(l: Line, a: Arc): Point | undefined {
  const dx = l.to.x - l.from.x
  const dy = l.to.y - l.from.y
  return lineCircleCrossings(l.from, l.to, a).find(p => {
    const at = (p.x - l.from.x) * dx + (p.y - l.from.y) * dy
    return at >= 0 && at <= dx * dx + dy * dy && spans(a, p)
  })
}
