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
 * At a turn of 180° the turn's sign says nothing; there the edge that bends more toward the other one decides
 * whether the thin wedge lies on the side of the offset. Where even that is equal the corner counts as open:
 * an additional round join only adds points nearer than the distance, a missing one would be wrong.
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
  // the angle by which the direction of a short edge may be out when its ends are known within `coincident`
  const doubt = coincident / Math.min(data[p + edgeSize]!, data[q + edgeSize]!)
  if (Math.abs(cross) > doubt) return side > 0 ? jointOpen : jointClosed
  // how much each edge, followed away from the corner, bends to the left
  const arriving = data[p + turning]! === 0 ? 0 : -data[p + turning]! / data[p + edgeSize]!
  const leaving = data[q + turning]! === 0 ? 0 : data[q + turning]! / data[q + edgeSize]!
  const wedgeOnLeft = arriving - leaving
  return (delta > 0 ? wedgeOnLeft : -wedgeOnLeft) >= 0 ? jointOpen : jointClosed
}
