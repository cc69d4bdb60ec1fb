import { angleLessSine } from '../measure/area.ts'
import type { Pack } from './pack.ts'

/**
 * Twice the area of a circular segment that is no more than half a circle lies between nothing and π/4 of the square of
 * its chord: this much around the middle.
 */
const halfRange = Math.PI / 8

/**
 * Whether the packed segments from `begin` up to `end`, a closed contour, run counter-clockwise, by the sign of
 * the area. The circular segments of the arcs are kept between bounds, which nearly always decides; only where it
 * does not are they measured.
 */
export function runsLeft(pack: Pack, begin: number, end: number): boolean {
  if (begin === end) return true
  const { x, y, from, to, radius, turn } = pack
  const ox = x[from[begin]!]!
  const oy = y[from[begin]!]!
  let twice = 0
  let arcs = 0
  let doubt = 0
  for (let s = begin; s < end; s++) {
    const a = from[s]!
    const b = to[s]!
    const ax = x[a]!
    const ay = y[a]!
    const bx = x[b]!
    const by = y[b]!
    twice += (ax - ox) * (by - oy) - (ay - oy) * (bx - ox)
    if (radius[s] === 0) continue
    const range = halfRange * ((bx - ax) * (bx - ax) + (by - ay) * (by - ay))
    arcs += turn[s]! * range
    doubt += range
  }
  if (Math.abs(twice + arcs) > doubt) return twice + arcs > 0
  for (let s = begin; s < end; s++) {
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
