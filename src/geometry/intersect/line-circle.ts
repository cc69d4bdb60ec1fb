/**
 * Where the line through a and b meets a circle: the number of places (0, 1 or 2), their x and y one after the
 * other in `out`, in the direction from a to b.
 *
 * A line that comes within `graze` (`coincident`, as a rule) of grazing the circle, from inside or from outside, touches it in one
 * place, halfway between the two: rounding would otherwise make two crossings of one contact, or none, and two
 * crossings of a graze lie much farther apart (√(8·r·depth)) than the graze is deep.
 */
export function meetLineCircle(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
  r: number,
  graze: number,
  out: Float64Array,
): number {
  let ux = bx - ax
  let uy = by - ay
  const length = Math.sqrt(ux * ux + uy * uy)
  ux /= length
  uy /= length
  const along = (cx - ax) * ux + (cy - ay) * uy
  const aside = ux * (cy - ay) - uy * (cx - ax)
  const depth = r - Math.abs(aside)
  if (depth < -graze) return 0
  if (depth <= graze) {
    // from the foot on the line, half the way to the circle
    const half = (aside > 0 ? -depth : depth) / 2
    out[0] = ax + along * ux + half * uy
    out[1] = ay + along * uy - half * ux
    return 1
  }
  const half = Math.sqrt(depth * (r + Math.abs(aside)))
  out[0] = ax + (along - half) * ux
  out[1] = ay + (along - half) * uy
  out[2] = ax + (along + half) * ux
  out[3] = ay + (along + half) * uy
  return 2
}
