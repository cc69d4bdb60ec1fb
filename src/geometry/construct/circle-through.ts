import { coincident } from '../../number/tolerance.ts'
import type { Disc } from '../measure/carrier.ts'
import { failure, type Outcome, success } from '../shape/outcome.ts'
import { distance, type Point } from '../shape/point.ts'

/**
 * The circle through three points.
 *
 * Fails with reason `no-chord` when two of them coincide, and with `in-line` when the middle one is within
 * `coincident` of the line through the two that are farthest apart.
 */
export function circleThrough(a: Point, b: Point, c: Point): Outcome<Disc> {
  const fail = (reason: string, facts: Record<string, number>) =>
    failure({ operation: 'circleThrough', reason, facts, input: { a, b, c } })
  const bx = b.x - a.x
  const by = b.y - a.y
  const cx = c.x - a.x
  const cy = c.y - a.y
  const sides = [distance(a, b), distance(b, c), distance(c, a)]
  const shortest = Math.min(...sides)
  if (!(shortest > coincident)) return fail('no-chord', { chord: shortest })
  const cross = bx * cy - by * cx
  const height = Math.abs(cross) / Math.max(...sides)
  if (!(height > coincident)) return fail('in-line', { height })
  const b2 = bx * bx + by * by
  const c2 = cx * cx + cy * cy
  const x = (cy * b2 - by * c2) / (2 * cross)
  const y = (bx * c2 - cx * b2) / (2 * cross)
  return success({ centre: { x: a.x + x, y: a.y + y }, radius: Math.hypot(x, y) })
}
