import type { Point, Vector } from '../shape/point.ts'
import { type Segment, startAngle, sweep } from '../shape/segment.ts'

/**
 * The point of an edge at the share `at` of its length, 0 at `from` and 1 at `to`; the ends are given back as
 * they are.
 */
export function pointAt(s: Segment, at: number): Point {
  if (at === 0) return s.from
  if (at === 1) return s.to
  if (s.kind === 'line') {
    return { x: s.from.x + (s.to.x - s.from.x) * at, y: s.from.y + (s.to.y - s.from.y) * at }
  }
  const angle = startAngle(s) + sweep(s) * at
  return { x: s.centre.x + s.radius * Math.cos(angle), y: s.centre.y + s.radius * Math.sin(angle) }
}

/**
 * The direction in which an edge runs at the share `at` of its length, as a vector of length 1. The waste or
 * wood to the left of it is at {@link leftOf} this direction. A line without length gives (0, 0).
 */
export function tangentAt(s: Segment, at: number): Vector {
  if (s.kind === 'line') return unit({ x: s.to.x - s.from.x, y: s.to.y - s.from.y })
  const p = pointAt(s, at)
  return unit({ x: -(p.y - s.centre.y) * s.turn, y: (p.x - s.centre.x) * s.turn })
}

/** The vector turned a quarter counter-clockwise: to the left of the way it points. */
export function leftOf(v: Vector): Vector {
  return { x: -v.y, y: v.x }
}

/** The vector of length 1 in the same direction; of (0, 0), (0, 0). */
export function unit(v: Vector): Vector {
  const length = Math.hypot(v.x, v.y)
  return length === 0 ? { x: 0, y: 0 } : { x: v.x / length, y: v.y / length }
}
