import { coincident } from '../../number/tolerance.ts'
import { meetCircles } from '../intersect/circle-circle.ts'
import { meetLineCircle } from '../intersect/line-circle.ts'
import { between, type Point } from '../shape/point.ts'

/** A whole circle by its measures, where a contour is not wanted; `radius` in millimetres. */
export type Disc = { readonly centre: Point; readonly radius: number }

/** The point where the line through `a` and `b` crosses the one through `c` and `d`; none when parallel. */
export function lineLineCrossing(a: Point, b: Point, c: Point, d: Point): Point | undefined {
  const u = between(a, b)
  const v = between(c, d)
  const cross = u.x * v.y - u.y * v.x
  if (cross === 0) return undefined
  const t = ((c.x - a.x) * v.y - (c.y - a.y) * v.x) / cross
  return { x: a.x + u.x * t, y: a.y + u.y * t }
}

/**
 * Where the line through `a` and `b` meets a circle, in the direction from `a` to `b`. One point where it
 * touches within `coincident`; none where it misses by more, or where `a` and `b` are the same.
 */
export function lineCircleCrossings(a: Point, b: Point, { centre, radius }: Disc): readonly Point[] {
  if (a.x === b.x && a.y === b.y) return []
  const out = new Float64Array(4)
  return firstPoints(out, meetLineCircle(a.x, a.y, b.x, b.y, centre.x, centre.y, radius, coincident, out))
}

/**
 * Where two circles meet: first the point to the right of the way from `a`'s centre to `b`'s. One point where
 * they touch within `coincident`; none where they miss by more, or are the same.
 */
export function circleCircleCrossings(a: Disc, b: Disc): readonly Point[] {
  const out = new Float64Array(4)
  const { centre: p, radius: r } = a
  const { centre: q, radius: s } = b
  return firstPoints(out, meetCircles(p.x, p.y, r, q.x, q.y, s, coincident, out))
}

function firstPoints(out: Float64Array, count: number): readonly Point[] {
  return Array.from({ length: Math.max(0, count) }, (_, i) => ({ x: out[2 * i]!, y: out[2 * i + 1]! }))
}
