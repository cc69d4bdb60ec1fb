import { coincident } from '../../number/tolerance.ts'
import {
  directionFrom,
  directionTo,
  edgeFrom,
  edgeSize,
  edgeTo,
  type OffsetPieces,
  turning,
  width,
} from './offset-pieces.ts'

/** The edges run on in one direction: the pieces meet. */
export const jointSmooth = 0
/** The corner opens toward the offset: a join fills the gap. */
export const jointOpen = 1
/** The corner closes toward the offset: the pieces overlap and are led through the corner itself. */
export const jointClosed = 2
/** The end of an open path. */
export const jointEnd = 3

/**
 * What lies between piece `i` and the piece `j` that follows it.
 *
 * Where the path turns nearly straight back, the sign of the turn at the very corner says little: the ends of
 * its edges may be out by `coincident`, and two arcs may even touch there. What counts is on which side of the
 * first edge the second one is a little way on, at a quarter of the shorter chord. Where even that is nothing
 * the corner counts as open: a join too many only adds points nearer than the distance, one too few would be
 * wrong.
 */
export function jointBetween(pieces: OffsetPieces, i: number, j: number, delta: number): number {
  const data = pieces.data
  const p = i * width
  const q = j * width
  const ax = data[p + directionTo]!
  const ay = data[p + directionTo + 1]!
  const bx = data[q + directionFrom]!
  const by = data[q + directionFrom + 1]!
  const cross = ax * by - ay * bx
  const dot = ax * bx + ay * by
  const side = delta > 0 ? cross : -cross
  if (dot > 0) {
    if (Math.abs(cross * delta) <= coincident) return jointSmooth
    return side > 0 ? jointOpen : jointClosed
  }
  const away = Math.min(chordOf(data, p), chordOf(data, q)) / 4
  // how much each edge, followed away from the corner, bends to the left
  const arriving = -data[p + turning]! / data[p + edgeSize]!
  const leaving = data[q + turning]! / data[q + edgeSize]!
  const apart = cross * away + ((arriving - leaving) * away * away) / 2
  return (delta > 0 ? apart : -apart) >= 0 ? jointOpen : jointClosed
}

function chordOf(data: Float64Array, p: number): number {
  const dx = data[p + edgeTo]! - data[p + edgeFrom]!
  const dy = data[p + edgeTo + 1]! - data[p + edgeFrom + 1]!
  return Math.hypot(dx, dy)
}
