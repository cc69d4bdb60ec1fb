import { coincident } from '../../number/tolerance.ts'

/** What `meetCircles` returns for two circles that nowhere part by more than `coincident`. */
export const sameCircle = -1

/**
 * Where two circles meet: the number of places (0, 1 or 2), their x and y one after the other in `out`, or
 * `sameCircle`. Circles that graze each other within `coincident` touch in one place, as in `meetLineCircle`.
 */
export function meetCircles(
  ax: number,
  ay: number,
  ar: number,
  bx: number,
  by: number,
  br: number,
  out: Float64Array,
): number {
  let ux = bx - ax
  let uy = by - ay
  const d = Math.sqrt(ux * ux + uy * uy)
  const between = Math.abs(ar - br)
  if (d + between <= coincident) return sameCircle
  const outside = ar + br - d
  const inside = d - between
  const depth = Math.min(outside, inside)
  if (depth < -coincident || d === 0) return 0
  ux /= d
  uy /= d
  if (depth <= coincident) {
    const reach = outside < inside ? (ar + d - br) / 2 : ar > br ? (ar + d + br) / 2 : (d - br - ar) / 2
    out[0] = ax + reach * ux
    out[1] = ay + reach * uy
    return 1
  }
  const along = (d * d + (ar - br) * (ar + br)) / (2 * d)
  const half = Math.sqrt(Math.max(0, (ar - along) * (ar + along)))
  const fx = ax + along * ux
  const fy = ay + along * uy
  out[0] = fx + half * uy
  out[1] = fy - half * ux
  out[2] = fx - half * uy
  out[3] = fy + half * ux
  return 2
}
