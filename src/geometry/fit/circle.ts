import { coincident } from '../../number/tolerance.ts'
import { failure, type Outcome, success } from '../shape/outcome.ts'
import { distance, type Point } from '../shape/point.ts'
import { fitLine } from './line.ts'
import { meanPoint } from './mean.ts'
import { type Residuals, summarise } from './residuals.ts'

/** The circle that fits; a residual is positive for a point outside it. */
export type CircleFit = Residuals & { readonly centre: Point; readonly radius: number }

/** The method either settles in a few dozen steps or is caught between points that make no circle. */
const mostSteps = 500

/** As usual for the method: between its bold steps and steepest descent; a factor, so without a unit. */
const firstDamping = 1e-3

/** From here ten times more makes a difference within a few steps; from nothing it never would. */
const leastDamping = 1e-12

/**
 * The circle for which the sum of the squared distances of the points is least (not of some easier algebraic
 * measure, which pulls the circle of a short arc too small).
 *
 * Fails with reason `few-points` for fewer than three, `in-line` when the points lie within `coincident` of a
 * line, and `no-end` when the search does not settle: the points do not hold a circle.
 *
 * Source: Gander, Golub, Strebel, Least-squares fitting of circles and ellipses, BIT 34, 1994; the steps are
 * damped as by Levenberg and Marquardt.
 */
export function fitCircle(points: readonly Point[]): Outcome<CircleFit> {
  const fail = (reason: string, facts: Record<string, number>) =>
    failure({ operation: 'fitCircle', reason, facts, input: points })
  if (points.length < 3) return fail('few-points', { points: points.length })
  const line = fitLine(points)
  if (!line.ok) return fail(line.fault.reason, {})
  if (line.value.worst <= coincident) return fail('in-line', { worst: line.value.worst })

  const origin = meanPoint(points)
  const local = points.map(p => ({ x: p.x - origin.x, y: p.y - origin.y }))
  const size = Math.sqrt(local.reduce((sum, p) => sum + p.x * p.x + p.y * p.y, 0) / local.length)
  let at = algebraicCircle(local)
  let square = sumOfSquares(local, at)
  let damping = firstDamping
  for (let step = 0; step < mostSteps; step++) {
    const move = dampedStep(local, at, damping)
    const next = { x: at.x + move.x, y: at.y + move.y, r: at.r + move.r }
    const nextSquare = sumOfSquares(local, next)
    // no step that the doubles of this size could show
    const settled = Math.hypot(move.x, move.y, move.r) <= 4 * Number.EPSILON * (size + Math.abs(at.r))
    if (settled || (nextSquare <= square && nextSquare === 0)) {
      const best = nextSquare <= square ? next : at
      const centre = { x: origin.x + best.x, y: origin.y + best.y }
      const residuals = points.map(p => distance(p, centre) - best.r)
      return success({ centre, radius: best.r, ...summarise(residuals) })
    }
    if (nextSquare <= square) {
      at = next
      square = nextSquare
      damping /= 10
    } else damping = Math.max(damping * 10, leastDamping)
  }
  return fail('no-end', { x: origin.x + at.x, y: origin.y + at.y, radius: at.r })
}

type Circle = { readonly x: number; readonly y: number; readonly r: number }

function sumOfSquares(points: readonly Point[], { x, y, r }: Circle): number {
  return points.reduce((sum, p) => sum + (Math.hypot(p.x - x, p.y - y) - r) ** 2, 0)
}

/** A first guess: x² + y² − 2ax − 2by − c = 0 by linear least squares, for points whose mean is the origin. */
function algebraicCircle(points: readonly Point[]): Circle {
  let xx = 0
  let xy = 0
  let yy = 0
  let xz = 0
  let yz = 0
  let z = 0
  for (const p of points) {
    const square = p.x * p.x + p.y * p.y
    xx += p.x * p.x
    xy += p.x * p.y
    yy += p.y * p.y
    xz += p.x * square
    yz += p.y * square
    z += square
  }
  const det = 2 * (xx * yy - xy * xy)
  const x = (xz * yy - yz * xy) / det
  const y = (yz * xx - xz * xy) / det
  return { x, y, r: Math.sqrt(x * x + y * y + z / points.length) }
}

/** One step of the Gauss-Newton method, the diagonal of its matrix enlarged by `damping`. */
function dampedStep(points: readonly Point[], { x, y, r }: Circle, damping: number): Circle {
  let [aa, ab, bb, a, b, ar, br, rr] = [0, 0, 0, 0, 0, 0, 0, 0]
  for (const p of points) {
    const away = Math.hypot(p.x - x, p.y - y)
    const u = away === 0 ? 0 : (x - p.x) / away
    const v = away === 0 ? 0 : (y - p.y) / away
    const residual = away - r
    aa += u * u
    ab += u * v
    bb += v * v
    a += u
    b += v
    ar -= u * residual
    br -= v * residual
    rr += residual
  }
  const n = points.length
  // | aa ab −a | the rows of JᵀJ for a residual |p − c| − r
  return solve([
    [aa * (1 + damping), ab, -a, ar],
    [ab, bb * (1 + damping), -b, br],
    [-a, -b, n * (1 + damping), rr],
  ])
}

/** Three linear equations by Cramer's rule; no move when they do not hold a solution. */
function solve(m: readonly (readonly [number, number, number, number])[]): Circle {
  const [p, q, s] = m as readonly [
    readonly [number, number, number, number],
    readonly [number, number, number, number],
    readonly [number, number, number, number],
  ]
  const det = (i: number, j: number, k: number) =>
    p[i]! * (q[j]! * s[k]! - q[k]! * s[j]!) -
    p[j]! * (q[i]! * s[k]! - q[k]! * s[i]!) +
    p[k]! * (q[i]! * s[j]! - q[j]! * s[i]!)
  const whole = det(0, 1, 2)
  if (whole === 0) return { x: 0, y: 0, r: 0 }
  return { x: det(3, 1, 2) / whole, y: det(0, 3, 2) / whole, r: det(0, 1, 3) / whole }
}
