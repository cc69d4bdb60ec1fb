import { coincident } from '../../number/tolerance.ts'
import { meetCircles } from '../intersect/circle-circle.ts'
import { meetLineCircle } from '../intersect/line-circle.ts'
import {
  centre,
  directionFrom,
  edgeFrom,
  edgeSize,
  edgeTo,
  type OffsetPieces,
  pieceFrom,
  pieceSize,
  pieceTo,
  turning,
  width,
} from './offset-pieces.ts'
import { angleAlong, withinArc } from './packed-curve.ts'

/**
 * Looks for the place where two pieces that overlap at a closed corner may be cut off against each other, so
 * that the loop through the corner need not be built.
 *
 * The band swept between an edge and its piece is `band(i)`. The loop left out is bounded by the two pieces
 * and the way through the corner. When that way and the loop's sides lie in both bands, the whole loop does,
 * and leaving it out takes one of at least two coverings away: what is covered stays the same. Anything less
 * clear is left to the general trimming, which needs no such argument.
 *
 * @param viaX the point between the pieces: the corner, or the centre of a collapsed arc between them
 * @param out receives the place; also used as scratch, at least 4 numbers
 * @returns whether the pieces may be cut at (out[0], out[1])
 */
export function trimCorner(
  pieces: OffsetPieces,
  i: number,
  j: number,
  delta: number,
  viaX: number,
  viaY: number,
  out: Float64Array,
): boolean {
  const data = pieces.data
  const p = i * width
  const q = j * width
  if (!findMeeting(data, p, q, out)) return false
  const x = out[0]!
  const y = out[1]!
  return (
    onPiece(data, p, x, y) &&
    onPiece(data, q, x, y) &&
    inBand(data, p, delta, viaX, viaY) &&
    inBand(data, q, delta, viaX, viaY) &&
    inBand(data, p, delta, data[q + pieceFrom]!, data[q + pieceFrom + 1]!) &&
    inBand(data, q, delta, data[p + pieceTo]!, data[p + pieceTo + 1]!) &&
    sideInBand(data, p, data[p + pieceTo]!, data[p + pieceTo + 1]!, x, y, q, delta) &&
    sideInBand(data, q, data[q + pieceFrom]!, data[q + pieceFrom + 1]!, x, y, p, delta)
  )
}

/** The meeting of the two pieces' lines or circles that is nearest to the corner, into out[0], out[1]. */
function findMeeting(data: Float64Array, p: number, q: number, out: Float64Array): boolean {
  const ex = data[p + pieceTo]!
  const ey = data[p + pieceTo + 1]!
  const first = data[p + turning]!
  const second = data[q + turning]!
  if (first === 0 && second === 0) {
    const ax = data[p + directionFrom]!
    const ay = data[p + directionFrom + 1]!
    const bx = data[q + directionFrom]!
    const by = data[q + directionFrom + 1]!
    const cross = ax * by - ay * bx
    if (cross === 0) return false
    const along = ((data[q + pieceFrom]! - ex) * by - (data[q + pieceFrom + 1]! - ey) * bx) / cross
    out[0] = ex + along * ax
    out[1] = ey + along * ay
    return true
  }
  let met: number
  let nearX = ex
  let nearY = ey
  if (first !== 0 && second !== 0) {
    met = meetCircles(
      data[p + centre]!,
      data[p + centre + 1]!,
      data[p + pieceSize]!,
      data[q + centre]!,
      data[q + centre + 1]!,
      data[q + pieceSize]!,
      coincident,
      out,
    )
  } else {
    const line = first === 0 ? p : q
    const arc = first === 0 ? q : p
    if (line === q) {
      nearX = data[q + pieceFrom]!
      nearY = data[q + pieceFrom + 1]!
    }
    met = meetLineCircle(
      data[line + pieceFrom]!,
      data[line + pieceFrom + 1]!,
      data[line + pieceTo]!,
      data[line + pieceTo + 1]!,
      data[arc + centre]!,
      data[arc + centre + 1]!,
      data[arc + pieceSize]!,
      coincident,
      out,
    )
  }
  if (met !== 2) return false
  if (squared(out[2]! - nearX, out[3]! - nearY) < squared(out[0]! - nearX, out[1]! - nearY)) {
    out[0] = out[2]!
    out[1] = out[3]!
  }
  return true
}

function squared(x: number, y: number): number {
  return x * x + y * y
}

function onPiece(data: Float64Array, p: number, x: number, y: number): boolean {
  const turn = data[p + turning]!
  if (turn === 0) {
    const along =
      (x - data[p + pieceFrom]!) * data[p + directionFrom]! +
      (y - data[p + pieceFrom + 1]!) * data[p + directionFrom + 1]!
    return along >= 0 && along <= data[p + pieceSize]!
  }
  return withinPieceArc(data, p, x, y)
}

function withinPieceArc(data: Float64Array, p: number, x: number, y: number): boolean {
  const cx = data[p + centre]!
  const cy = data[p + centre + 1]!
  return withinArc(
    data[p + turning]!,
    data[p + edgeFrom]! - cx,
    data[p + edgeFrom + 1]! - cy,
    data[p + edgeTo]! - cx,
    data[p + edgeTo + 1]! - cy,
    x - cx,
    y - cy,
  )
}

/** Whether a point lies in the band between an edge and its piece. */
function inBand(data: Float64Array, p: number, delta: number, x: number, y: number): boolean {
  const turn = data[p + turning]!
  if (turn === 0) {
    const ux = data[p + directionFrom]!
    const uy = data[p + directionFrom + 1]!
    const dx = x - data[p + edgeFrom]!
    const dy = y - data[p + edgeFrom + 1]!
    const along = dx * ux + dy * uy
    const right = dx * uy - dy * ux
    const height = delta > 0 ? right : -right
    return (
      along >= -coincident &&
      along <= data[p + edgeSize]! + coincident &&
      height >= -coincident &&
      height <= Math.abs(delta) + coincident
    )
  }
  const away = Math.sqrt(squared(x - data[p + centre]!, y - data[p + centre + 1]!))
  const inner = Math.min(data[p + edgeSize]!, data[p + pieceSize]!)
  const outer = Math.max(data[p + edgeSize]!, data[p + pieceSize]!)
  return away >= inner - coincident && away <= outer + coincident && withinPieceArc(data, p, x, y)
}

/**
 * Whether the part of piece `p` between its end at the corner and the meeting lies in the band of `q`: a
 * straight part when its ends do, a quarter turn or less when its middle does too.
 */
function sideInBand(
  data: Float64Array,
  p: number,
  endX: number,
  endY: number,
  x: number,
  y: number,
  q: number,
  delta: number,
): boolean {
  const turn = data[p + turning]!
  if (turn === 0 && data[q + turning]! === 0) return true
  if (turn === 0) return inBand(data, q, delta, (endX + x) / 2, (endY + y) / 2)
  const cx = data[p + centre]!
  const cy = data[p + centre + 1]!
  const ax = endX - cx
  const ay = endY - cy
  const bx = x - cx
  const by = y - cy
  if (ax * bx + ay * by < 0) return false
  const mx = ax + bx
  const my = ay + by
  const scale = data[p + pieceSize]! / Math.sqrt(squared(mx, my))
  return inBand(data, q, delta, cx + scale * mx, cy + scale * my)
}

/** How far along a piece a point on it lies: mm on a line, radians on an arc. */
export function placeOnPiece(data: Float64Array, p: number, x: number, y: number): number {
  const turn = data[p + turning]!
  if (turn === 0) {
    return (
      (x - data[p + pieceFrom]!) * data[p + directionFrom]! +
      (y - data[p + pieceFrom + 1]!) * data[p + directionFrom + 1]!
    )
  }
  const cx = data[p + centre]!
  const cy = data[p + centre + 1]!
  return angleAlong(turn, data[p + pieceFrom]! - cx, data[p + pieceFrom + 1]! - cy, x - cx, y - cy)
}
