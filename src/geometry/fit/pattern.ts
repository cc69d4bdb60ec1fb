import { coincident } from '../../number/tolerance.ts'
import { apply, type Matrix } from '../shape/matrix.ts'
import { failure, type Outcome, success } from '../shape/outcome.ts'
import { distance, type Point, type Vector } from '../shape/point.ts'
import { meanPoint } from './mean.ts'
import { type Residuals, summarise } from './residuals.ts'

/**
 * The movement that brings one pattern of points onto another: first a scale and a turn about the origin, then
 * a shift. `matrix` does all three. A residual is the distance that remains at a pair of points.
 */
export type PatternFit = Residuals & {
  readonly matrix: Matrix
  /** In radians from −π to π, positive counter-clockwise. */
  readonly turn: number
  readonly shift: Vector
  /** 1 for a rigid fit. */
  readonly scale: number
}

/**
 * The turn and shift that bring `from` onto `to`, point i onto point i, with the least sum of squared
 * distances. Nothing is mirrored or stretched.
 *
 * Fails with reason `unequal` when the patterns differ in count, `few-points` for fewer than two points, and
 * `no-turn` when no turn is better than another (all points of a pattern in one place, say).
 *
 * Source: the Procrustes problem in the plane, solved with complex numbers: the turn is the argument of
 * Σ conj(a)·b over the points less their means. (Umeyama, 1991, for the general case.)
 */
export function fitRigid(from: readonly Point[], to: readonly Point[]): Outcome<PatternFit> {
  return fitPattern('fitRigid', from, to, () => 1)
}

/** As {@link fitRigid}, with one scale for all directions as well; fails likewise. */
export function fitSimilarity(from: readonly Point[], to: readonly Point[]): Outcome<PatternFit> {
  return fitPattern('fitSimilarity', from, to, (common, spread) => common / spread)
}

function fitPattern(
  operation: string,
  from: readonly Point[],
  to: readonly Point[],
  scaleOf: (common: number, spread: number) => number,
): Outcome<PatternFit> {
  const fail = (reason: string, facts: Record<string, number>) =>
    failure({ operation, reason, facts, input: { from, to } })
  if (from.length !== to.length) return fail('unequal', { from: from.length, to: to.length })
  if (from.length < 2) return fail('few-points', { points: from.length })
  const p = meanPoint(from)
  const q = meanPoint(to)
  let dot = 0
  let cross = 0
  let spread = 0
  from.forEach((a, i) => {
    const b = to[i]!
    dot += (a.x - p.x) * (b.x - q.x) + (a.y - p.y) * (b.y - q.y)
    cross += (a.x - p.x) * (b.y - q.y) - (a.y - p.y) * (b.x - q.x)
    spread += (a.x - p.x) ** 2 + (a.y - p.y) ** 2
  })
  const common = Math.hypot(dot, cross)
  if (!(common > coincident * coincident * from.length)) return fail('no-turn', { common })
  const scale = scaleOf(common, spread)
  const cos = (scale * dot) / common
  const sin = (scale * cross) / common
  const shift = { x: q.x - (cos * p.x - sin * p.y), y: q.y - (sin * p.x + cos * p.y) }
  const matrix: Matrix = { a: cos, b: sin, c: -sin, d: cos, e: shift.x, f: shift.y }
  const residuals = from.map((a, i) => distance(apply(matrix, a), to[i]!))
  return success({ matrix, turn: Math.atan2(cross, dot), shift, scale, ...summarise(residuals) })
}
