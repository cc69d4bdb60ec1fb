import { coincident } from '../../number/tolerance.ts'
import { meetCircles, sameCircle } from '../intersect/circle-circle.ts'
import { meetLineCircle } from '../intersect/line-circle.ts'
import { stride, withinArc } from './packed-curve.ts'

/**
 * What two segments have in common: 0, 1 or 2 plain crossings, their points in out[0..1] and out[2..3], or
 * `unclear`: they touch, overlap, or one ends within `coincident` of the other, so that the sign of a
 * calculated number must not decide.
 */
export const unclear = -1

/** Common points of two segments that do not follow each other. */
export function crossSegments(data: Float64Array, i: number, j: number, out: Float64Array): number {
  const p = i * stride
  const q = j * stride
  if (data[p + 7] === 0) {
    return data[q + 7] === 0 ? crossLines(data, p, q, out) : crossLineArc(data, p, q, out)
  }
  return data[q + 7] === 0 ? crossLineArc(data, q, p, out) : crossArcs(data, p, q, out)
}

function crossLines(data: Float64Array, p: number, q: number, out: Float64Array): number {
  const px = data[p]!
  const py = data[p + 1]!
  const ux = data[p + 4]!
  const uy = data[p + 5]!
  const pLength = data[p + 6]!
  // heights of the second line's ends over the first line, positive on its left
  const x0 = data[q]! - px
  const y0 = data[q + 1]! - py
  const h0 = ux * y0 - uy * x0
  const x1 = data[q + 2]! - px
  const y1 = data[q + 3]! - py
  const h1 = ux * y1 - uy * x1
  if ((h0 > coincident && h1 > coincident) || (h0 < -coincident && h1 < -coincident)) return 0
  const s0 = ux * x0 + uy * y0
  const s1 = ux * x1 + uy * y1
  const low = -coincident
  const high = pLength + coincident
  const flat0 = Math.abs(h0) <= coincident
  const flat1 = Math.abs(h1) <= coincident
  if (flat0 && flat1) return Math.max(s0, s1) < low || Math.min(s0, s1) > high ? 0 : unclear
  if (flat0 && s0 >= low && s0 <= high) return unclear
  if (flat1 && s1 >= low && s1 <= high) return unclear
  if (h0 > 0 === h1 > 0) return 0
  const s = s0 + ((s1 - s0) * h0) / (h0 - h1)
  if (s < low || s > high) {
    // the first line's end may still lie within `coincident` of a second line that passes at a flat angle
    return s < low ? endNearLine(data, q, px, py) : endNearLine(data, q, data[p + 2]!, data[p + 3]!)
  }
  if (
    endNearLine(data, q, px, py) === unclear ||
    endNearLine(data, q, data[p + 2]!, data[p + 3]!) === unclear
  ) {
    return unclear
  }
  if (s < 0 || s > pLength) return 0
  out[0] = px + s * ux
  out[1] = py + s * uy
  return 1
}

function endNearLine(data: Float64Array, q: number, x: number, y: number): number {
  const dx = x - data[q]!
  const dy = y - data[q + 1]!
  const ux = data[q + 4]!
  const uy = data[q + 5]!
  if (Math.abs(ux * dy - uy * dx) > coincident) return 0
  const s = ux * dx + uy * dy
  return s < -coincident || s > data[q + 6]! + coincident ? 0 : unclear
}

function crossLineArc(data: Float64Array, p: number, q: number, out: Float64Array): number {
  const px = data[p]!
  const py = data[p + 1]!
  const ux = data[p + 4]!
  const uy = data[p + 5]!
  const length = data[p + 6]!
  const cx = data[q + 4]!
  const cy = data[q + 5]!
  const radius = data[q + 6]!
  const endX = data[p + 2]!
  const endY = data[p + 3]!
  const met = meetLineCircle(px, py, endX, endY, cx, cy, radius, coincident, out)
  if (met === 0) return 0
  if (met === 1) {
    // grazing: all of the line that is within twice `coincident` of the circle is in doubt
    const x = out[0]!
    const y = out[1]!
    const along = (x - px) * ux + (y - py) * uy
    const reach = Math.sqrt(4 * coincident * radius) + coincident
    if (along < -reach || along > length + reach) return 0
    return nearArc(data, q, x, y, reach) ? unclear : 0
  }
  const secondX = out[2]!
  const secondY = out[3]!
  let count = 0
  for (let k = 0; k < 2; k++) {
    const x = k === 0 ? out[0]! : secondX
    const y = k === 0 ? out[1]! : secondY
    const along = (x - px) * ux + (y - py) * uy
    if (along < -coincident || along > length + coincident) continue
    const place = placeOnArc(data, q, x, y)
    if (place === 0) continue
    if (place === unclear || along < coincident || along > length - coincident) return unclear
    out[2 * count] = x
    out[2 * count + 1] = y
    count++
  }
  // ends that slip past a root at a flat angle
  if (endNearArc(data, q, px, py) || endNearArc(data, q, endX, endY)) return unclear
  if (endNearLine(data, p, data[q]!, data[q + 1]!) === unclear) return unclear
  if (endNearLine(data, p, data[q + 2]!, data[q + 3]!) === unclear) return unclear
  return count
}

function crossArcs(data: Float64Array, p: number, q: number, out: Float64Array): number {
  const ax = data[p + 4]!
  const ay = data[p + 5]!
  const a = data[p + 6]!
  const bx = data[q + 4]!
  const by = data[q + 5]!
  const b = data[q + 6]!
  const met = meetCircles(ax, ay, a, bx, by, b, coincident, out)
  if (met === sameCircle) return shareArc(data, p, q) ? unclear : 0
  if (met === 0) return 0
  if (met === 1) {
    const x = out[0]!
    const y = out[1]!
    // the circles run within twice `coincident` of each other this far on both sides of the touching point; for
    // an inner touch the farther the closer the two radii are
    const inner = squared(bx - ax, by - ay) < Math.max(a * a, b * b)
    const bend = inner ? Math.abs(1 / a - 1 / b) : 1 / a + 1 / b
    const reach = Math.min(Math.sqrt((4 * coincident) / bend), a + b) + coincident
    return nearArc(data, p, x, y, reach) && nearArc(data, q, x, y, reach) ? unclear : 0
  }
  const secondX = out[2]!
  const secondY = out[3]!
  let count = 0
  for (let k = 0; k < 2; k++) {
    const x = k === 0 ? out[0]! : secondX
    const y = k === 0 ? out[1]! : secondY
    const first = placeOnArc(data, p, x, y)
    if (first === 0) continue
    const second = placeOnArc(data, q, x, y)
    if (second === 0) continue
    if (first === unclear || second === unclear) return unclear
    out[2 * count] = x
    out[2 * count + 1] = y
    count++
  }
  for (let k = 0; k < 4; k += 2) {
    if (endNearArc(data, q, data[p + k]!, data[p + k + 1]!)) return unclear
    if (endNearArc(data, p, data[q + k]!, data[q + k + 1]!)) return unclear
  }
  return count
}

/** Whether two arcs of one circle have a point in common. */
function shareArc(data: Float64Array, p: number, q: number): boolean {
  return (
    nearArc(data, q, data[p]!, data[p + 1]!, coincident) ||
    nearArc(data, q, data[p + 2]!, data[p + 3]!, coincident) ||
    nearArc(data, p, data[q]!, data[q + 1]!, coincident)
  )
}

/** For a point on the arc's circle: 1 on the arc, 0 off it, `unclear` at one of its ends. */
function placeOnArc(data: Float64Array, q: number, x: number, y: number): number {
  if (isNear(data, q, x, y, coincident) || isNear(data, q + 2, x, y, coincident)) return unclear
  return inSweep(data, q, x, y) ? 1 : 0
}

function nearArc(data: Float64Array, q: number, x: number, y: number, reach: number): boolean {
  return isNear(data, q, x, y, reach) || isNear(data, q + 2, x, y, reach) || inSweep(data, q, x, y)
}

function endNearArc(data: Float64Array, q: number, x: number, y: number): boolean {
  const away = Math.sqrt(squared(x - data[q + 4]!, y - data[q + 5]!))
  return Math.abs(away - data[q + 6]!) <= coincident && nearArc(data, q, x, y, coincident)
}

function isNear(data: Float64Array, at: number, x: number, y: number, reach: number): boolean {
  return squared(x - data[at]!, y - data[at + 1]!) <= reach * reach
}

function squared(x: number, y: number): number {
  return x * x + y * y
}

function inSweep(data: Float64Array, q: number, x: number, y: number): boolean {
  const cx = data[q + 4]!
  const cy = data[q + 5]!
  return withinArc(
    data[q + 7]!,
    data[q]! - cx,
    data[q + 1]! - cy,
    data[q + 2]! - cx,
    data[q + 3]! - cy,
    x - cx,
    y - cy,
  )
}

/**
 * Common points of two segments of which the second begins where the first ends, beside that point. The other
 * crossing of a line and a circle, or of two circles, that share a point is its mirror image in the line
 * through the centres, or in the perpendicular from the centre; no root is taken, so a tangent contact is
 * told from a crossing with all digits.
 *
 * @param closes the second ends where the first begins, too
 */
export function crossNeighbours(
  data: Float64Array,
  i: number,
  j: number,
  closes: boolean,
  out: Float64Array,
): number {
  const p = i * stride
  const q = j * stride
  const x = data[q]!
  const y = data[q + 1]!
  const firstTurn = data[p + 7]!
  const secondTurn = data[q + 7]!
  if (firstTurn === 0 && secondTurn === 0) {
    const ux = data[p + 4]!
    const uy = data[p + 5]!
    const wx = data[q + 4]!
    const wy = data[q + 5]!
    // straight back on itself
    const short = Math.min(data[p + 6]!, data[q + 6]!)
    const back = ux * wx + uy * wy < 0
    return back && Math.abs(ux * wy - uy * wx) * short <= coincident ? unclear : 0
  }
  let otherX: number
  let otherY: number
  if (firstTurn !== 0 && secondTurn !== 0) {
    const ax = data[p + 4]!
    const ay = data[p + 5]!
    const dx = data[q + 4]! - ax
    const dy = data[q + 5]! - ay
    const size = dx * dx + dy * dy
    if (size <= coincident * coincident) {
      // one circle: only running back on itself, or round more than a whole turn, is more than the shared point
      if (firstTurn !== secondTurn) return unclear
      const ends = inSweep(data, p, data[q + 2]!, data[q + 3]!)
      return ends && !closes && !isNear(data, p + 2, data[q + 2]!, data[q + 3]!, coincident) ? unclear : 0
    }
    const along = ((x - ax) * dx + (y - ay) * dy) / size
    otherX = 2 * (ax + along * dx) - x
    otherY = 2 * (ay + along * dy) - y
  } else {
    const lineAt = firstTurn === 0 ? p : q
    const arcAt = firstTurn === 0 ? q : p
    const ux = data[lineAt + 4]!
    const uy = data[lineAt + 5]!
    const along = (data[arcAt + 4]! - x) * ux + (data[arcAt + 5]! - y) * uy
    otherX = x + 2 * along * ux
    otherY = y + 2 * along * uy
  }
  if (isNear(data, q, otherX, otherY, coincident)) return 0
  if (closes && isNear(data, p, otherX, otherY, coincident)) return 0
  const first = placeOn(data, p, otherX, otherY)
  if (first === 0) return 0
  const second = placeOn(data, q, otherX, otherY)
  if (second === 0) return 0
  if (first === unclear || second === unclear) return unclear
  out[0] = otherX
  out[1] = otherY
  return 1
}

function placeOn(data: Float64Array, p: number, x: number, y: number): number {
  if (data[p + 7] !== 0) return placeOnArc(data, p, x, y)
  const s = (x - data[p]!) * data[p + 4]! + (y - data[p + 1]!) * data[p + 5]!
  if (s < -coincident || s > data[p + 6]! + coincident) return 0
  return s < coincident || s > data[p + 6]! - coincident ? unclear : 1
}
