import { lineCircleCrossings } from '../../geometry/measure/carrier.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Arc, Segment } from '../../geometry/shape/segment.ts'
import { spans } from '../../geometry/shape/span.ts'

/** A straight line from one point to another, such as a leader. */
export type Stretch = readonly [Point, Point]

/** Whether two boxes share more than their border. */
export function boxesOverlap(a: Bounds, b: Bounds): boolean {
  return a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top
}

/** Whether a line or arc has a point in a box, its border included. */
export function boxMeetsSegment(box: Bounds, segment: Segment): boolean {
  if (segment.kind === 'line') return boxMeetsStretch(box, segment.from, segment.to)
  const { centre, radius, from, to } = segment
  const nearest = Math.hypot(
    Math.max(box.left - centre.x, 0, centre.x - box.right),
    Math.max(box.bottom - centre.y, 0, centre.y - box.top),
  )
  const farthest = Math.hypot(
    Math.max(centre.x - box.left, box.right - centre.x),
    Math.max(centre.y - box.bottom, box.top - centre.y),
  )
  if (nearest > radius || farthest < radius) return false
  if (holds(box, from) || holds(box, to)) return true
  // an arc with both ends outside that comes in passes a side
  const corners = [
    { x: box.left, y: box.bottom },
    { x: box.right, y: box.bottom },
    { x: box.right, y: box.top },
    { x: box.left, y: box.top },
  ] as const
  return corners.some((corner, i) => stretchMeetsArc([corner, corners[(i + 1) % 4]!], segment))
}

/** Whether a straight line has a point in a box, its border included. */
export function boxMeetsStretch(box: Bounds, a: Point, b: Point): boolean {
  if (Math.max(a.x, b.x) < box.left || Math.min(a.x, b.x) > box.right) return false
  if (Math.max(a.y, b.y) < box.bottom || Math.min(a.y, b.y) > box.top) return false
  // the line parts the two where all corners lie on one side of it
  const dx = b.x - a.x
  const dy = b.y - a.y
  const side = (x: number, y: number): number => dx * (y - a.y) - dy * (x - a.x)
  const first = side(box.left, box.bottom)
  const second = side(box.right, box.bottom)
  const third = side(box.left, box.top)
  const fourth = side(box.right, box.top)
  return Math.min(first, second, third, fourth) <= 0 && Math.max(first, second, third, fourth) >= 0
}

/** Whether a straight line crosses a line or arc. */
export function stretchMeets(stretch: Stretch, segment: Segment): boolean {
  return segment.kind === 'line'
    ? stretchesCross(stretch, [segment.from, segment.to])
    : stretchMeetsArc(stretch, segment)
}

export function stretchesCross([a, b]: Stretch, [p, q]: Stretch): boolean {
  // of lines one behind the other rounding alone would decide
  if (Math.max(a.x, b.x) < Math.min(p.x, q.x) || Math.max(p.x, q.x) < Math.min(a.x, b.x)) return false
  if (Math.max(a.y, b.y) < Math.min(p.y, q.y) || Math.max(p.y, q.y) < Math.min(a.y, b.y)) return false
  return isLeft(a, b, p) !== isLeft(a, b, q) && isLeft(p, q, a) !== isLeft(p, q, b)
}

/** The smallest upright rectangle around a straight line. */
export function stretchBounds([a, b]: Stretch): Bounds {
  return {
    left: Math.min(a.x, b.x),
    right: Math.max(a.x, b.x),
    bottom: Math.min(a.y, b.y),
    top: Math.max(a.y, b.y),
  }
}

function stretchMeetsArc([a, b]: Stretch, arc: Arc): boolean {
  const dx = b.x - a.x
  const dy = b.y - a.y
  return lineCircleCrossings(a, b, arc).some(p => {
    const along = (p.x - a.x) * dx + (p.y - a.y) * dy
    return along >= 0 && along <= dx * dx + dy * dy && spans(arc, p)
  })
}

function holds(box: Bounds, { x, y }: Point): boolean {
  return x >= box.left && x <= box.right && y >= box.bottom && y <= box.top
}

/** Lettering may be a hair off; nothing that is cut hangs on this sign. */
function isLeft(p: Point, q: Point, r: Point): boolean {
  return (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x) > 0
}
