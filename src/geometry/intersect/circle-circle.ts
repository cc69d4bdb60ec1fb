/** What `meetCircles` returns for two circles that nowhere part by more than `graze`. */
export const sameCircle = -1

/**
 * Where two circles meet: the number of places (0, 1 or 2), their x and y one after the other in `out`, or
 * `sameCircle`. Circles that graze each other within `graze` touch in one place, as in `meetLineCircle`.
 */
export function meetCircles(
  ax: number,
  ay: number,
  ar: number,
  bx: number,
  by: number,
  br: number,
  graze: number,
  out: Float64Array,
): number {
  let ux = bx - ax
  let uy = by - ay
  const d = Math.sqrt(ux * ux + uy * uy)
  const between = Math.abs(ar - br)
  if (d + between <= graze) return sameCircle
  const outside = ar + br - d
  const inside = d - between
  const depth = Math.min(outside, inside)
  if (depth < -graze || d === 0) return 0
  ux /= d
  uy /= d
  if (depth <= graze) {
    const reach = outside < inside ? (ar + d - br) / 2 : ar > br ? (ar + d + br) / 2 : (d - br - ar) / 2
    out[0] = ax + reach * ux
    out[1] = ay + reach * uy
    return 1
  }
  // from the centre of the smaller circle: from that of a very large one, the rounding of its radius would count
  const small = Math.min(ar, br)
  const large = Math.max(ar, br)
  const along = (small * small + (d - large) * (d + large)) / (2 * d)
  const half = Math.sqrt(Math.max(0, (small - along) * (small + along)))
  const fx = ar <= br ? ax + along * ux : bx - along * ux
  const fy = ar <= br ? ay + along * uy : by - along * uy
  out[0] = fx + half * uy
  out[1] = fy - half * ux
  out[2] = fx - half * uy
  out[3] = fy + half * ux
  return 2
}
