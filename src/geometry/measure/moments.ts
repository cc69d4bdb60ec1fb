import type { Contour, Region } from '../shape/contour.ts'
import type { Point } from '../shape/point.ts'
import { type Arc, type Segment, startAngle, sweep } from '../shape/segment.ts'
import { angleLessSine } from './area.ts'
import { orientRegion } from './orient.ts'

/**
 * What an area weighs and how it resists bending. `area` in mm²; `centroid` is where it balances. The second
 * moments, in mm⁴, are about the axes through the centroid: `xx` = ∫(x − cx)² dA, `yy` = ∫(y − cy)² dA,
 * `xy` = ∫(x − cx)(y − cy) dA. Engineers write Iy for `xx`, the resistance to bending about the upright axis.
 */
export type Moments = {
  readonly area: number
  readonly centroid: Point
  readonly xx: number
  readonly yy: number
  readonly xy: number
}

/** The axes about which a shape resists bending most and least; at right angles through the centroid. */
export type PrincipalMoments = {
  /** The larger moment, in mm⁴, of the spread along `direction`. */
  readonly major: number
  /** The smaller moment, in mm⁴. */
  readonly minor: number
  /** The direction in which the area is spread most, in radians, from −π/2 to π/2 counter-clockwise from +x. */
  readonly direction: number
}

/** Sums about one origin: area, first moments, second moments. */
type Sums = { area: number; x: number; y: number; xx: number; yy: number; xy: number }

/**
 * The area, centroid and second moments of a region, its holes taken away, exact for arcs.
 *
 * @throws RangeError for a region without area
 */
export function regionMoments(region: Region): Moments {
  const { outer, holes } = orientRegion(region)
  const origin = outer.segments[0]?.from ?? { x: 0, y: 0 }
  const sums: Sums = { area: 0, x: 0, y: 0, xx: 0, yy: 0, xy: 0 }
  for (const contour of [outer, ...holes]) addContour(sums, contour, origin)
  if (!(sums.area > 0)) throw new RangeError('a region without area has no centroid')
  const dx = sums.x / sums.area
  const dy = sums.y / sums.area
  return {
    area: sums.area,
    centroid: { x: origin.x + dx, y: origin.y + dy },
    xx: sums.xx - sums.x * dx,
    yy: sums.yy - sums.y * dy,
    xy: sums.xy - sums.x * dy,
  }
}

/** The principal moments; Source: the eigenvalues of the tensor (Mohr's circle). */
export function principalMoments({ xx, yy, xy }: Moments): PrincipalMoments {
  const middle = (xx + yy) / 2
  const reach = Math.hypot((xx - yy) / 2, xy)
  return { major: middle + reach, minor: middle - reach, direction: Math.atan2(2 * xy, xx - yy) / 2 }
}

function addContour(sums: Sums, contour: Contour, origin: Point): void {
  for (const s of contour.segments) {
    addTriangle(sums, s, origin)
    if (s.kind === 'arc') addCircularSegment(sums, s, origin)
  }
}

/** The triangle of the origin and the edge's ends, positive counter-clockwise. */
function addTriangle(sums: Sums, { from, to }: Segment, origin: Point): void {
  const px = from.x - origin.x
  const py = from.y - origin.y
  const qx = to.x - origin.x
  const qy = to.y - origin.y
  const cross = px * qy - qx * py
  sums.area += cross / 2
  sums.x += (cross * (px + qx)) / 6
  sums.y += (cross * (py + qy)) / 6
  sums.xx += (cross * (px * px + px * qx + qx * qx)) / 12
  sums.yy += (cross * (py * py + py * qy + qy * qy)) / 12
  sums.xy += (cross * (2 * px * py + px * qy + qx * py + 2 * qx * qy)) / 24
}

/**
 * What lies between an arc and its chord. About the circle's centre, with u along the middle of the arc, v
 * across it and α half the sweep: ∫u dA = ⅔r³sin³α, ∫u² dA = r⁴/16·(4α − sin 4α),
 * ∫v² dA = r⁴/4·(α − ⅔sin 2α + ¹⁄₁₂sin 4α). All are odd in α, so a clockwise arc counts negative.
 *
 * Source: sector less triangle, integrated in polar coordinates.
 */
function addCircularSegment(sums: Sums, a: Arc, origin: Point): void {
  const angle = sweep(a)
  const half = angle / 2
  const r = a.radius
  const area = (r * r * angleLessSine(angle)) / 2
  const first = (2 / 3) * (r * Math.sin(half)) ** 3
  const along = (r ** 4 / 16) * angleLessSine(2 * angle)
  const across = (r ** 4 / 4) * acrossTerm(half)
  const middle = startAngle(a) + half
  const ux = Math.cos(middle)
  const uy = Math.sin(middle)
  const cx = a.centre.x - origin.x
  const cy = a.centre.y - origin.y
  const fx = first * ux
  const fy = first * uy
  sums.area += area
  sums.x += fx + area * cx
  sums.y += fy + area * cy
  sums.xx += along * ux * ux + across * uy * uy + 2 * fx * cx + area * cx * cx
  sums.yy += along * uy * uy + across * ux * ux + 2 * fy * cy + area * cy * cy
  sums.xy += (along - across) * ux * uy + fx * cy + fy * cx + area * cx * cy
}

/** Below this the series is exact to the last digit, and the sum of sines is not. */
const seriesBelow = 0.5

/** α − ⅔sin 2α + ¹⁄₁₂sin 4α, which starts with 4α⁵/15: three terms that cancel for a flat arc. */
function acrossTerm(half: number): number {
  if (Math.abs(half) >= seriesBelow) return half - (2 / 3) * Math.sin(2 * half) + Math.sin(4 * half) / 12
  let sum = 0
  let power = half * half * half
  let factorial = 6
  for (let k = 5; k <= 31; k += 2) {
    power *= half * half
    factorial *= k * (k - 1)
    const sign = k % 4 === 1 ? 1 : -1
    sum += (sign * power * (4 ** k / 12 - (2 / 3) * 2 ** k)) / factorial
  }
  return sum
}
