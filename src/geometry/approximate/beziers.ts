import type { Point } from '../shape/point.ts'
import { type Arc, startAngle, sweep } from '../shape/segment.ts'

/** A cubic Bézier curve. */
export type Cubic = {
  readonly from: Point
  readonly control1: Point
  readonly control2: Point
  readonly to: Point
}

/**
 * The widest arc that one curve stands for. Its error grows with the sixth power of the angle: at 30° it is
 * 3.7e-7 of the radius, 0.0037 mm at ten metres; at 90° it would be 0.027 mm at 100 mm already.
 */
const widestCurve = Math.PI / 6

/** A whole number of curves must not be one more because the sweep came out a rounding too wide. */
const roundingOfSweep = 1e-12

/**
 * Cubic curves that stand for an arc, each of at most 30°, one after the other from the arc's `from` to its
 * `to`; neighbours share their end. The controls lie 4/3·tan(θ/4)·radius along the tangents.
 *
 * Source: the usual arc approximation that touches the arc at the ends and in the middle; its error is stated
 * in Goldapp, Approximation of circular arcs by cubic polynomials, 1991 (from memory).
 */
export function arcBeziers(a: Arc): readonly Cubic[] {
  const angle = sweep(a)
  const count = Math.max(1, Math.ceil(Math.abs(angle) / widestCurve - roundingOfSweep))
  const start = startAngle(a)
  const handle = (4 / 3) * Math.tan(angle / count / 4)
  const on = (i: number): Point => {
    if (i === 0) return a.from
    if (i === count) return a.to
    const at = start + (angle * i) / count
    return { x: a.centre.x + a.radius * Math.cos(at), y: a.centre.y + a.radius * Math.sin(at) }
  }
  const points = Array.from({ length: count + 1 }, (_, i) => on(i))
  return points.slice(1).map((to, i) => {
    const from = points[i]!
    return {
      from,
      control1: { x: from.x - handle * (from.y - a.centre.y), y: from.y + handle * (from.x - a.centre.x) },
      control2: { x: to.x + handle * (to.y - a.centre.y), y: to.y - handle * (to.x - a.centre.x) },
      to,
    }
  })
}
