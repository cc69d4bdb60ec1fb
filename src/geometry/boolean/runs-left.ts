import { angleLessSine } from '../measure/area.ts'
import type { Pack } from './pack.ts'

/**
 * Whether the contour that was packed last, as the segments from `begin` on, runs counter-clockwise, by the sign of
 * its area. Nearly always packing it has told; only where it has not is the area measured.
 */
export function runsLeft(pack: Pack, begin: number): boolean {
  if (pack.lean !== 0) return pack.lean > 0
  const end = pack.segmentCount
  if (begin === end) return true
  const { x, y, from, to, radius, turn } = pack
  const ox = x[from[begin]!]!
  const oy = y[from[begin]!]!
  let twice = 0
  for (let s = begin; s < end; s++) {
    const a = from[s]!
    const b = to[s]!
    twice += (x[a]! - ox) * (y[b]! - oy) - (y[a]! - oy) * (x[b]! - ox)
    const r = radius[s]!
    if (r > 0) twice += turn[s]! * r * r * angleLessSine(sweepOf(pack, s))
  }
  return twice >= 0
}

/** The angle that a packed arc turns, at most half a turn, without its sign. */
function sweepOf(pack: Pack, s: number): number {
  const a = pack.from[s]!
  const b = pack.to[s]!
  const ux = pack.x[a]! - pack.centreX[s]!
  const uy = pack.y[a]! - pack.centreY[s]!
  const vx = pack.x[b]! - pack.centreX[s]!
  const vy = pack.y[b]! - pack.centreY[s]!
  return Math.abs(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy))
}
