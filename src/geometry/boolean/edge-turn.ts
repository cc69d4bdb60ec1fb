import type { Pack } from './pack.ts'
import type { Edges } from './split.ts'

/** How far the middle of a half-edge lies to the right of its chord: the sagitta, positive for a left turn. */
export function bulge(pack: Pack, edges: Edges, h: number): number {
  const e = h >> 1
  const half = halfTurn(pack, edges, e)
  if (half === 0) return 0
  const { x, y } = pack
  const a = edges.from[e]!
  const b = edges.to[e]!
  const sagitta = (Math.hypot(x[b]! - x[a]!, y[b]! - y[a]!) / 2) * Math.tan(half / 2)
  return h & 1 ? -sagitta : sagitta
}

/**
 * Half the angle an edge turns, positive to the left; 0 for a straight one. An edge is taken to be the arc of
 * that turn between its two vertices, wherever these were snapped to, so at its vertices it leaves its chord by
 * just this angle.
 */
export function halfTurn(pack: Pack, edges: Edges, e: number): number {
  const s = edges.segment[e]!
  if (edges.straight[e] === 1) return 0
  const { x, y } = pack
  const a = edges.from[e]!
  const b = edges.to[e]!
  const cx = pack.centreX[s]!
  const cy = pack.centreY[s]!
  const ux = x[a]! - cx
  const uy = y[a]! - cy
  const vx = x[b]! - cx
  const vy = y[b]! - cy
  const t = pack.turn[s]!
  let turn = Math.atan2(t * (ux * vy - uy * vx), ux * vx + uy * vy)
  if (turn < 0) turn += 2 * Math.PI
  return (t * turn) / 2
}
