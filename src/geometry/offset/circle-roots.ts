/**
 * Where a line through (px, py) with unit direction (ux, uy) meets a circle: the two places as distances along
 * the line, the smaller first, written to `out[0]` and `out[1]`.
 *
 * @returns how far the line's nearest point lies inside the circle, in mm; negative: no meeting, and `out[0]`
 *   holds the place of the nearest point
 */
export function lineCircleRoots(
  px: number,
  py: number,
  ux: number,
  uy: number,
  cx: number,
  cy: number,
  radius: number,
  out: Float64Array,
): number {
  const dx = cx - px
  const dy = cy - py
  const foot = dx * ux + dy * uy
  const away = Math.abs(ux * dy - uy * dx)
  const inside = radius - away
  if (inside < 0) {
    out[0] = foot
    out[1] = foot
    return inside
  }
  // (r − h)(r + h) loses no digits where r² − h² would
  const half = Math.sqrt(inside * (radius + away))
  out[0] = foot - half
  out[1] = foot + half
  return inside
}

/**
 * Where two circles meet: (out[0], out[1]) to the right of the way from the first centre to the second,
 * (out[2], out[3]) to the left.
 *
 * @returns how deep the circles overlap beyond touching, in mm; negative: they do not meet, and both points
 *   are where they come nearest. Concentric circles give −Infinity.
 */
export function circleCircleRoots(
  ax: number,
  ay: number,
  a: number,
  bx: number,
  by: number,
  b: number,
  out: Float64Array,
): number {
  const dx = bx - ax
  const dy = by - ay
  const apart = Math.sqrt(dx * dx + dy * dy)
  if (apart === 0) return Number.NEGATIVE_INFINITY
  const ux = dx / apart
  const uy = dy / apart
  const difference = Math.abs(a - b)
  const overlap = Math.min(a + b - apart, apart - difference)
  let along = (apart + ((a - b) / apart) * (a + b)) / 2
  let half = 0
  if (overlap >= 0) {
    // Heron's formula in factors, stable where the circles nearly touch.
    // Source: W. Kahan, Miscalculating area and angles of a needle-like triangle, 2014
    const sixteen = (a + b + apart) * (a + b - apart) * (apart - (a - b)) * (apart + (a - b))
    half = Math.sqrt(Math.max(0, sixteen)) / (2 * apart)
  } else {
    along = a + b < apart ? a + (apart - a - b) / 2 : a >= b ? a : -a
  }
  const fx = ax + along * ux
  const fy = ay + along * uy
  out[0] = fx + half * uy
  out[1] = fy - half * ux
  out[2] = fx - half * uy
  out[3] = fy + half * ux
  return overlap
}
