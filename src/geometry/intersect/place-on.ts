import type { Point } from '../shape/point.ts'
import { type Segment, sweep } from '../shape/segment.ts'

/**
 * The share of an edge's length at which a point of it lies, 0 at `from` and 1 at `to`: the inverse of `pointAt`.
 * A point beside the edge counts as its foot on the line or circle; one beyond an end as that end.
 */
export function placeOn(s: Segment, p: Point): number {
  if (s.kind === 'line') {
    const dx = s.to.x - s.from.x
    const dy = s.to.y - s.from.y
    const square = dx * dx + dy * dy
    return square === 0 ? 0 : clamped(((p.x - s.from.x) * dx + (p.y - s.from.y) * dy) / square)
  }
  const ux = s.from.x - s.centre.x
  const uy = s.from.y - s.centre.y
  const vx = p.x - s.centre.x
  const vy = p.y - s.centre.y
  const whole = Math.abs(sweep(s))
  let angle = Math.atan2(s.turn * (ux * vy - uy * vx), ux * vx + uy * vy)
  // a place before the start and one after the end differ by which of the two is nearer
  if (angle < 0 && angle + 2 * Math.PI - whole < -angle) angle += 2 * Math.PI
  return clamped(angle / whole)
}

function clamped(share: number): number {
  return Math.min(1, Math.max(0, share))
}
