import { coincident } from '../../number/tolerance.ts'
import { directionFrom, directionTo, edgeSize, type OffsetPieces, turning, width } from './offset-pieces.ts'

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
 * Where the path turns nearly straight back, the sign of the turn alone says little: two arcs may touch there,
 * and part by less than `coincident` before they cross again. Then the edge that bends toward the other one
 * tells on which side the thin wedge between them lies. Where even that is nothing the corner counts as open: a
 * join too many only adds points nearer than the distance, one too few would be wrong.
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
  if (dot > 0 && Math.abs(cross * delta) <= coincident) return jointSmooth
  if (dot > 0) return side > 0 ? jointOpen : jointClosed
  // how much each edge, followed away from the corner, bends to the left
  const arriving = -data[p + turning]! / data[p + edgeSize]!
  const leaving = data[q + turning]! / data[q + edgeSize]!
  const bend = delta > 0 ? arriving - leaving : leaving - arriving
  // side·s + bend·s²/2 apart after a way s: at most side²/(2·bend) until they cross again
  const touching = side === 0 || (side * bend < 0 && side * side <= 2 * coincident * Math.abs(bend))
  return (touching ? bend : side) >= 0 ? jointOpen : jointClosed
}
