import { coincident } from '../../number/tolerance.ts'
import { float64Array, int8Array, int32Array, type Memory } from '../boolean/memory.ts'
import type { Segment } from '../shape/segment.ts'

/**
 * The edges of one chain and what each becomes at the distance, in one flat array. Piece `k` takes `width`
 * numbers from `k * width` on; the names below are the places within them.
 *
 * A piece is *collapsed* when its edge is an arc that bends toward the offset with a radius no greater than
 * the distance. Every normal of such an edge ends at the centre: points beyond it are nearer to another part
 * of the chain, so the piece is the centre alone and the curve never turns inside out.
 */
export type OffsetPieces = {
  count: number
  data: Float64Array
  /** Index of the edge each piece comes from. */
  source: Int32Array
  collapsed: Int8Array
  /** What happens between a piece and the next one; see `joints.ts`. */
  joint: Int8Array
}

export const width = 20
/** The edge's own first and last point. */
export const edgeFrom = 0
export const edgeTo = 2
/** Unit directions of travel at the first and at the last point. */
export const directionFrom = 4
export const directionTo = 6
/** First and last point of the offset piece; trimming and mitres move them. */
export const pieceFrom = 8
export const pieceTo = 10
/** 0 for a line, 1 or −1 for an arc: its turn. */
export const turning = 12
/** Radius of the edge and of the offset piece (arcs), length of both (lines). */
export const edgeSize = 13
export const pieceSize = 14
/** Centre (arcs). */
export const centre = 15

export function emptyPieces(memory: Memory, capacity: number): OffsetPieces {
  return {
    count: 0,
    data: float64Array(memory, capacity * width),
    source: int32Array(memory, capacity),
    collapsed: int8Array(memory, capacity),
    joint: int8Array(memory, capacity),
  }
}

/**
 * Adds the piece of one edge, offset by `delta` to the right of travel (to the left when negative). An edge
 * shorter than `coincident` adds nothing.
 *
 * @param backwards travel the edge from its `to` to its `from`
 */
export function addPiece(
  pieces: OffsetPieces,
  edge: Segment,
  source: number,
  backwards: boolean,
  delta: number,
): void {
  const from = backwards ? edge.to : edge.from
  const to = backwards ? edge.from : edge.to
  const dx = to.x - from.x
  const dy = to.y - from.y
  const chord = Math.sqrt(dx * dx + dy * dy)
  // what is no number goes on, and is found when the curve's extent is none
  if (chord <= coincident) return

  const k = pieces.count++
  const data = pieces.data
  const at = k * width
  pieces.source[k] = source
  pieces.collapsed[k] = 0
  data[at + edgeFrom] = from.x
  data[at + edgeFrom + 1] = from.y
  data[at + edgeTo] = to.x
  data[at + edgeTo + 1] = to.y
  if (edge.kind === 'line') {
    const ux = dx / chord
    const uy = dy / chord
    data[at + directionFrom] = ux
    data[at + directionFrom + 1] = uy
    data[at + directionTo] = ux
    data[at + directionTo + 1] = uy
    data[at + pieceFrom] = from.x + delta * uy
    data[at + pieceFrom + 1] = from.y - delta * ux
    data[at + pieceTo] = to.x + delta * uy
    data[at + pieceTo + 1] = to.y - delta * ux
    data[at + turning] = 0
    data[at + edgeSize] = chord
    data[at + pieceSize] = chord
    return
  }
  const turn = backwards ? -edge.turn : edge.turn
  const cx = edge.centre.x
  const cy = edge.centre.y
  let ax = from.x - cx
  let ay = from.y - cy
  let bx = to.x - cx
  let by = to.y - cy
  const a = Math.sqrt(ax * ax + ay * ay)
  const b = Math.sqrt(bx * bx + by * by)
  ax /= a
  ay /= a
  bx /= b
  by /= b
  data[at + directionFrom] = -turn * ay
  data[at + directionFrom + 1] = turn * ax
  data[at + directionTo] = -turn * by
  data[at + directionTo + 1] = turn * bx
  // right of travel is away from the centre of an arc that turns counter-clockwise
  let radius = edge.radius + turn * delta
  if (radius <= coincident) {
    radius = 0
    pieces.collapsed[k] = 1
  }
  data[at + pieceFrom] = cx + radius * ax
  data[at + pieceFrom + 1] = cy + radius * ay
  data[at + pieceTo] = cx + radius * bx
  data[at + pieceTo + 1] = cy + radius * by
  data[at + turning] = turn
  data[at + edgeSize] = edge.radius
  data[at + pieceSize] = radius
  data[at + centre] = cx
  data[at + centre + 1] = cy
}
