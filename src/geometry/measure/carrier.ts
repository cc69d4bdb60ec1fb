import { coincident } from '../../number/tolerance.ts'
import { between, distance, type Point } from '../shape/point.ts'

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
  const length = distance(a, b)
  if (length === 0) return []
  const ux = (b.x - a.x) / length
  const uy = (b.y - a.y) / length
  const along = (centre.x - a.x) * ux + (centre.y - a.y) * uy
  const aside = (centre.x - a.x) * uy - (centre.y - a.y) * ux
  const foot = { x: a.x + ux * along, y: a.y + uy * along }
  const gap = Math.abs(aside) - radius
  if (gap > coincident) return []
  // (r − s)(r + s) keeps the digits that r² − s² would lose near a touch
  const half = Math.sqrt(Math.max(0, -gap * (radius + Math.abs(aside))))
  if (half <= coincident) return [foot]
  return [
    { x: foot.x - ux * half, y: foot.y - uy * half },
    { x: foot.x + ux * half, y: foot.y + uy * half },
  ]
}

/**
 * Where two circles meet: first the point to the left of the way from `a`'s centre to `b`'s. One point where
 * they touch within `coincident`; none where they miss by more, or are concentric.
 */
export function circleCircleCrossings(a: Disc, b: Disc): readonly Point[] {
  const apart = distance(a.centre, b.centre)
  if (apart === 0) return []
  const ux = (b.centre.x - a.centre.x) / apart
  const uy = (b.centre.y - a.centre.y) / apart
  const outside = apart - a.radius - b.radius
  const within = Math.abs(a.radius - b.radius) - apart
  if (outside > coincident || within > coincident) return []
  const along = (apart + ((a.radius - b.radius) * (a.radius + b.radius)) / apart) / 2
  const half = Math.sqrt(Math.max(0, (a.radius - along) * (a.radius + along)))
  const foot = { x: a.centre.x + ux * along, y: a.centre.y + uy * along }
  if (half <= coincident || outside >= 0 || within >= 0) return [foot]
  return [
    { x: foot.x - uy * half, y: foot.y + ux * half },
    { x: foot.x + uy * half, y: foot.y - ux * half },
  ]
}
