import { coincident } from '../../number/tolerance.ts'
import { failure, type Outcome, success } from '../shape/outcome.ts'
import type { Point, Vector } from '../shape/point.ts'
import { meanPoint } from './mean.ts'
import { type Residuals, summarise } from './residuals.ts'

/**
 * The line that fits, through `point` (the mean of the points) along `direction` (length 1, from the first
 * point toward the last). A residual is positive for a point to the left of it.
 */
export type LineFit = Residuals & { readonly point: Point; readonly direction: Vector }

/**
 * The line for which the sum of the squared distances of the points, square to it, is least.
 *
 * Fails with reason `few-points` for fewer than two, and with `one-place` when the points are within
 * `coincident` of one place.
 *
 * Source: the principal axis of the points' scatter (Pearson, 1901).
 */
export function fitLine(points: readonly Point[]): Outcome<LineFit> {
  const fail = (reason: string, facts: Record<string, number>) =>
    failure({ operation: 'fitLine', reason, facts, input: points })
  if (points.length < 2) return fail('few-points', { points: points.length })
  const point = meanPoint(points)
  let xx = 0
  let xy = 0
  let yy = 0
  for (const p of points) {
    const dx = p.x - point.x
    const dy = p.y - point.y
    xx += dx * dx
    xy += dx * dy
    yy += dy * dy
  }
  if (!(Math.sqrt((xx + yy) / points.length) > coincident)) return fail('one-place', point)
  const angle = Math.atan2(2 * xy, xx - yy) / 2
  const first = points[0]!
  const last = points.at(-1)!
  const forward = (last.x - first.x) * Math.cos(angle) + (last.y - first.y) * Math.sin(angle) >= 0 ? 1 : -1
  const direction = { x: forward * Math.cos(angle), y: forward * Math.sin(angle) }
  const residuals = points.map(p => (p.y - point.y) * direction.x - (p.x - point.x) * direction.y)
  return success({ point, direction, ...summarise(residuals) })
}
