import { coincident } from '../../number/tolerance.ts'
import { float64Array, int32Array, type Memory } from '../boolean/memory.ts'
import { cornerTips, endTips } from './join-corner.ts'
import { jointBetween, jointClosed, jointEnd, jointOpen, jointSmooth } from './joints.ts'
import {
  centre,
  directionFrom,
  directionTo,
  edgeTo,
  type OffsetPieces,
  pieceFrom,
  pieceSize,
  pieceTo,
  turning,
  width,
} from './offset-pieces.ts'
import type { End, Join } from './options.ts'
import { appendArc, appendLine, type PackedCurve, roleEdge, roleJoin, stride } from './packed-curve.ts'
import { placeOnPiece, trimCorner } from './trim-corner.ts'

export type ChainStyle = {
  readonly delta: number
  readonly join: Join
  readonly mitreLimit: number
  readonly end: End
}

/**
 * The raw offset of one closed chain: every piece, joined where corners open toward the offset, led through
 * the corner itself where they close.
 *
 * Why this curve is right however much it crosses itself: it is, piece by piece, the boundary of the shape
 * plus (growing) or minus (shrinking) the band swept by every edge and the sector of every open corner. Its
 * winding number at a point is 1 inside the shape and 0 outside, plus or minus the number of bands and sectors
 * over the point. So the points with a positive winding number are the offset, whole edges and arcs that
 * vanish included; nothing has to be guessed from distances.
 *
 * @param ends the pieces after which an open path ends and its way back begins, or its way out again
 */
export function appendRawChain(
  curve: PackedCurve,
  pieces: OffsetPieces,
  ends: readonly number[],
  style: ChainStyle,
): void {
  const n = pieces.count
  if (n === 0) return
  for (let i = 0; i < n; i++) {
    pieces.joint[i] = jointBetween(pieces, i, i + 1 === n ? 0 : i + 1, style.delta)
  }
  for (const i of ends) pieces.joint[i] = jointEnd
  const cuts = cutCorners(curve.memory, pieces, style.delta)
  runOnLines(pieces, style)

  const first = firstPiece(pieces)
  const data = pieces.data
  const begin = curve.count
  const startX = data[first * width + pieceFrom]!
  const startY = data[first * width + pieceFrom + 1]!
  const pen: Pen = { curve, x: startX, y: startY }
  let i = first
  for (let done = 0; done < n; ) {
    drawPiece(pen, pieces, i)
    const target = cuts[i]!
    const steps = target < 0 ? 1 : (target - i + n) % n || n
    if (target < 0) drawJoint(pen, pieces, i, i + 1 === n ? 0 : i + 1, style)
    done += steps
    i = (i + steps) % n
  }
  closeChain(pen, begin, startX, startY, pieces.source[first]!)
}

/** A piece to begin with: one that no cut leaves out. */
function firstPiece(pieces: OffsetPieces): number {
  for (let i = 0; i < pieces.count; i++) if (pieces.collapsed[i] === 0) return i
  return 0
}

/**
 * Cuts pieces off against each other at closed corners, also across one collapsed arc.
 *
 * @returns for every piece the piece it was cut against, −1 where it was not
 */
function cutCorners(memory: Memory, pieces: OffsetPieces, delta: number): Int32Array {
  const n = pieces.count
  const data = pieces.data
  const cuts = int32Array(memory, n).fill(-1)
  const cutBefore = int32Array(memory, n).fill(-1)
  const places = float64Array(memory, 2 * n)
  const meeting = float64Array(memory, 4)
  for (let i = 0; i < n; i++) {
    if (pieces.collapsed[i] === 1) continue
    const joint = pieces.joint[i]!
    let j = i + 1 === n ? 0 : i + 1
    let viaX = data[i * width + edgeTo]!
    let viaY = data[i * width + edgeTo + 1]!
    if (pieces.collapsed[j] === 1) {
      if (!closes(joint) || !closes(pieces.joint[j]!)) continue
      viaX = data[j * width + centre]!
      viaY = data[j * width + centre + 1]!
      j = j + 1 === n ? 0 : j + 1
      if (pieces.collapsed[j] === 1) continue
    } else if (joint !== jointClosed) continue
    if (i === j || !trimCorner(pieces, i, j, delta, viaX, viaY, meeting)) continue
    cuts[i] = j
    cutBefore[j] = i
    places[2 * i] = meeting[0]!
    places[2 * i + 1] = meeting[1]!
  }
  // where both ends of a piece are cut and nothing is left between, neither cut may stand
  for (let i = 0; i < n; i++) {
    const before = cutBefore[i]!
    if (before < 0 || cuts[i]! < 0) continue
    const from = placeOnPiece(data, i * width, places[2 * before]!, places[2 * before + 1]!)
    const to = placeOnPiece(data, i * width, places[2 * i]!, places[2 * i + 1]!)
    const unit = data[i * width + turning]! === 0 ? 1 : data[i * width + pieceSize]!
    if ((to - from) * unit > coincident) continue
    cuts[before] = -1
    cutBefore[cuts[i]!] = -1
    cuts[i] = -1
    cutBefore[i] = -1
  }
  for (let i = 0; i < n; i++) {
    const j = cuts[i]!
    if (j < 0) continue
    const x = places[2 * i]!
    const y = places[2 * i + 1]!
    data[i * width + pieceTo] = x
    data[i * width + pieceTo + 1] = y
    data[j * width + pieceFrom] = x
    data[j * width + pieceFrom + 1] = y
  }
  return cuts
}

function closes(joint: number): boolean {
  return joint === jointSmooth || joint === jointClosed
}

type Pen = { readonly curve: PackedCurve; x: number; y: number }

function drawPiece(pen: Pen, pieces: OffsetPieces, i: number): void {
  if (pieces.collapsed[i] === 1) return
  const data = pieces.data
  const p = i * width
  const x = data[p + pieceTo]!
  const y = data[p + pieceTo + 1]!
  const turn = data[p + turning]!
  const source = pieces.source[i]!
  if (turn === 0 && near(pen, x, y)) return
  const smooth = followsRoundJoin(pen) ? 1 : 0
  if (turn === 0) {
    appendLine(pen.curve, pen.x, pen.y, x, y, source, roleEdge, smooth)
  } else {
    appendArc(
      pen.curve,
      pen.x,
      pen.y,
      x,
      y,
      data[p + centre]!,
      data[p + centre + 1]!,
      data[p + pieceSize]!,
      turn,
      source,
      roleEdge,
      smooth,
    )
  }
  pen.x = x
  pen.y = y
}

function followsRoundJoin(pen: Pen): boolean {
  const { curve } = pen
  const last = curve.count - 1
  if (last < 0 || curve.role[last] !== roleJoin) return false
  const at = last * stride
  return curve.data[at + 7] !== 0 && curve.data[at + 2] === pen.x && curve.data[at + 3] === pen.y
}

function near(pen: Pen, x: number, y: number): boolean {
  return Math.abs(pen.x - x) <= coincident && Math.abs(pen.y - y) <= coincident
}

function drawLine(pen: Pen, x: number, y: number, source: number): void {
  if (near(pen, x, y)) return
  appendLine(pen.curve, pen.x, pen.y, x, y, source, roleJoin, 0)
  pen.x = x
  pen.y = y
}

function drawJoint(pen: Pen, pieces: OffsetPieces, i: number, j: number, style: ChainStyle): void {
  const data = pieces.data
  const p = i * width
  const q = j * width
  const source = pieces.source[i]!
  const joint = pieces.joint[i]!
  const vx = data[p + edgeTo]!
  const vy = data[p + edgeTo + 1]!
  if (joint === jointClosed) drawLine(pen, vx, vy, source)
  if (joint === jointOpen || joint === jointEnd) {
    const { delta } = style
    const bx = vx + delta * data[q + directionFrom + 1]!
    const by = vy - delta * data[q + directionFrom]!
    if ((joint === jointOpen ? style.join : style.end) === 'round') {
      drawLine(pen, vx + delta * data[p + directionTo + 1]!, vy - delta * data[p + directionTo]!, source)
      drawRound(pen, vx, vy, bx, by, delta, source)
    } else {
      // a line has been run on to the tip already, an arc is met at its own end
      if (data[p + turning]! !== 0) {
        drawLine(pen, vx + delta * data[p + directionTo + 1]!, vy - delta * data[p + directionTo]!, source)
      }
      const tips = jointTips(pieces, i, j, style)
      for (let k = 0; k < tips.length; k += 2) drawLine(pen, tips[k]!, tips[k + 1]!, source)
      if (data[q + turning]! !== 0) drawLine(pen, bx, by, source)
    }
  }
  drawLine(pen, data[q + pieceFrom]!, data[q + pieceFrom + 1]!, source)
}

/** An arc about the corner, tangent to both offset edges: every point of it has the distance. */
function drawRound(
  pen: Pen,
  vx: number,
  vy: number,
  bx: number,
  by: number,
  delta: number,
  source: number,
): void {
  const turn = delta > 0 ? 1 : -1
  appendArc(pen.curve, pen.x, pen.y, bx, by, vx, vy, Math.abs(delta), turn, source, roleJoin, 1)
  pen.x = bx
  pen.y = by
}

function jointTips(pieces: OffsetPieces, i: number, j: number, style: ChainStyle): readonly number[] {
  const { delta, join, end } = style
  const data = pieces.data
  const p = i * width
  const q = j * width
  const vx = data[p + edgeTo]!
  const vy = data[p + edgeTo + 1]!
  const ax = data[p + directionTo]!
  const ay = data[p + directionTo + 1]!
  if (pieces.joint[i] === jointEnd) return end === 'round' ? [] : endTips(end, delta, vx, vy, ax, ay)
  const bx = data[q + directionFrom]!
  const by = data[q + directionFrom + 1]!
  return join === 'round' ? [] : cornerTips(join, style.mitreLimit, delta, vx, vy, ax, ay, bx, by)
}

/** Lengthens the straight pieces on both sides of a mitre or a square end to its tips, so that no edge is broken there. */
function runOnLines(pieces: OffsetPieces, style: ChainStyle): void {
  if (style.join === 'round' && style.end === 'round') return
  const n = pieces.count
  const data = pieces.data
  for (let i = 0; i < n; i++) {
    const joint = pieces.joint[i]!
    if (joint !== jointOpen && joint !== jointEnd) continue
    const j = i + 1 === n ? 0 : i + 1
    const tips = jointTips(pieces, i, j, style)
    if (tips.length === 0) continue
    if (data[i * width + turning]! === 0) {
      data[i * width + pieceTo] = tips[0]!
      data[i * width + pieceTo + 1] = tips[1]!
    }
    if (data[j * width + turning]! === 0) {
      data[j * width + pieceFrom] = tips[tips.length - 2]!
      data[j * width + pieceFrom + 1] = tips[tips.length - 1]!
    }
  }
}

/** Leads the chain back to its first point and links its last segment to its first. */
function closeChain(pen: Pen, begin: number, x: number, y: number, source: number): void {
  const { curve } = pen
  drawLine(pen, x, y, source)
  const last = curve.count - 1
  if (last <= begin) {
    curve.count = begin
    return
  }
  const at = last * stride
  const data = curve.data
  data[at + 2] = x
  data[at + 3] = y
  if (data[at + 7] === 0) {
    const dx = x - data[at]!
    const dy = y - data[at + 1]!
    const length = Math.sqrt(dx * dx + dy * dy)
    data[at + 4] = dx / length
    data[at + 5] = dy / length
    data[at + 6] = length
  }
  curve.next[last] = begin
  curve.chains.push(begin)
}
