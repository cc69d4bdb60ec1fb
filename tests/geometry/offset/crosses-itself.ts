import type { Contour } from '../../../src/geometry/shape/contour.ts'
import { distance, type Point } from '../../../src/geometry/shape/point.ts'
import type { Segment } from '../../../src/geometry/shape/segment.ts'
import { spans } from '../../../src/geometry/shape/span.ts'
import { coincident } from '../../../src/number/tolerance.ts'
import { directionAt } from './offset-laws.ts'

/** An arrangement moves the end of an edge by up to twice `coincident`, and an arc's two sides by that each. */
const snapped = 4 * coincident

/**
 * Whether contours cross themselves or each other anywhere but at shared ends; slow and plain, to judge by.
 * Touching is allowed: a crossing counts when it lies farther than `slack` from every end of the two edges, and
 * is steep enough for one to get more than `snapped` beyond the other before an end is reached.
 */
export function crossesItself(contours: readonly Contour[], slack = 10 * coincident): boolean {
  const segments = contours.flatMap(c => c.segments)
  return segments.some((a, i) =>
    segments.slice(i + 1).some(b =>
      meetings(a, b).some(p => {
        const clear = Math.min(...[a.from, a.to, b.from, b.to].map(e => distance(e, p)))
        const u = directionAt(a, p)
        const v = directionAt(b, p)
        return clear > slack && clear * Math.abs(u.x * v.y - u.y * v.x) > snapped
      }),
    ),
  )
}

function meetings(a: Segment, b: Segment): Point[] {
  const found =
    a.kind === 'line'
      ? lineWith(a.from, a.to, b)
      : b.kind === 'line'
        ? lineWith(b.from, b.to, a)
        : circles(a, b)
  return found.filter(p => holds(a, p) && holds(b, p))
}

function holds(s: Segment, p: Point): boolean {
  if (s.kind === 'arc') return spans(s, p)
  const dx = s.to.x - s.from.x
  const dy = s.to.y - s.from.y
  const along = (p.x - s.from.x) * dx + (p.y - s.from.y) * dy
  return along >= 0 && along <= dx * dx + dy * dy
}

function lineWith(a: Point, b: Point, s: Segment): Point[] {
  const dx = b.x - a.x
  const dy = b.y - a.y
  if (s.kind === 'line') {
    const ex = s.to.x - s.from.x
    const ey = s.to.y - s.from.y
    const cross = dx * ey - dy * ex
    if (Math.abs(cross) < 1e-9 * Math.hypot(dx, dy) * Math.hypot(ex, ey)) return []
    const t = ((s.from.x - a.x) * ey - (s.from.y - a.y) * ex) / cross
    return [{ x: a.x + t * dx, y: a.y + t * dy }]
  }
  const size = Math.hypot(dx, dy)
  const foot = ((s.centre.x - a.x) * dx + (s.centre.y - a.y) * dy) / size
  const away = ((s.centre.x - a.x) * dy - (s.centre.y - a.y) * dx) / size
  if (s.radius - Math.abs(away) < coincident) return []
  const half = Math.sqrt(s.radius * s.radius - away * away)
  return [foot - half, foot + half].map(t => ({ x: a.x + (t * dx) / size, y: a.y + (t * dy) / size }))
}

function circles(first: Segment, second: Segment): Point[] {
  if (first.kind === 'line' || second.kind === 'line') return []
  // counted from the smaller circle: beside the square of a very large radius the rest would be rounded away
  const [a, b] = first.radius <= second.radius ? [first, second] : [second, first]
  const dx = b.centre.x - a.centre.x
  const dy = b.centre.y - a.centre.y
  const apart = Math.hypot(dx, dy)
  if (apart < coincident) return []
  if (a.radius + b.radius - apart < coincident || apart - Math.abs(a.radius - b.radius) < coincident)
    return []
  const along = (a.radius * a.radius + (apart - b.radius) * (apart + b.radius)) / (2 * apart)
  const half = Math.sqrt(Math.max(0, (a.radius - along) * (a.radius + along)))
  const fx = a.centre.x + (along * dx) / apart
  const fy = a.centre.y + (along * dy) / apart
  return [1, -1].map(s => ({ x: fx - (s * half * dy) / apart, y: fy + (s * half * dx) / apart }))
}
