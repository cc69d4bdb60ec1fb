import { between, type Point } from '../shape/point.ts'
import type { Segment } from '../shape/segment.ts'
import { leftOf, tangentAt } from './along.ts'

/** Whether the way from the edge's point `on` to `p` leaves to the left of the edge. */
export function leadsLeft(s: Segment, on: Point, p: Point): boolean {
  const normal =
    s.kind === 'line'
      ? leftOf(between(s.from, s.to))
      : s.turn === 1
        ? between(on, s.centre)
        : between(s.centre, on)
  return normal.x * (p.x - on.x) + normal.y * (p.y - on.y) > 0
}

/** A turn of less than this, in radians, is no corner that could decide on which side a point lies. */
const straight = 1e-6

/**
 * Whether `p` lies to the left of a boundary whose nearest point is the corner from `before` to `after`. What is
 * nearest to a corner lies on the side to which it points: to the left where the boundary turns right.
 */
export function leftOfCorner(before: Segment, after: Segment, p: Point): boolean {
  const u = tangentAt(before, 1)
  const v = tangentAt(after, 0)
  const turning = Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y)
  if (Math.abs(turning) > straight) return turning < 0
  return v.x * (p.y - after.from.y) - v.y * (p.x - after.from.x) > 0
}
