import type { Point } from './point.ts'

/** A straight edge. `tag` is the edge's name; it is kept through boolean and offset. */
export type Line = {
  readonly kind: 'line'
  readonly from: Point
  readonly to: Point
  readonly tag?: string
}

/**
 * A circular edge. `turn` 1 runs counter-clockwise about `centre`, −1 clockwise. An arc always sweeps more
 * than nothing and less than a full turn, so `from` and `to` differ; a full circle is two half arcs.
 * `radius` is the distance from `centre` to both ends, within `coincident`.
 */
export type Arc = {
  readonly kind: 'arc'
  readonly from: Point
  readonly to: Point
  readonly centre: Point
  readonly radius: number
  readonly turn: 1 | -1
  readonly tag?: string
}

/** An edge: straight or circular, and nothing else. */
export type Segment = Line | Arc

/*
 * Every edge is made by the functions that follow, key by key. Begun by a spread, edges have hidden classes of their
 * own, and all that looks into them is slow, which is the whole kernel.
 */

/** A straight edge from one point to another. */
export function line(from: Point, to: Point, tag?: string): Line {
  return tag === undefined ? { kind: 'line', from, to } : { kind: 'line', from, to, tag }
}

/** An arc from its ends, its centre and its turn; the radius is the distance from `centre` to `from`. */
export function arc(from: Point, to: Point, centre: Point, turn: 1 | -1, tag?: string): Arc {
  return arcOf(from, to, centre, Math.hypot(from.x - centre.x, from.y - centre.y), turn, tag)
}

/** An arc whose radius is known better than the distance between two rounded points. */
export function arcOf(
  from: Point,
  to: Point,
  centre: Point,
  radius: number,
  turn: 1 | -1,
  tag?: string,
): Arc {
  return tag === undefined
    ? { kind: 'arc', from, to, centre, radius, turn }
    : { kind: 'arc', from, to, centre, radius, turn, tag }
}

/** The same edge between other ends, which lie on it or on what it is a piece of. */
export function withEnds(s: Line, from: Point, to: Point): Line
export function withEnds(s: Arc, from: Point, to: Point): Arc
export function withEnds(s: Segment, from: Point, to: Point): Segment
export function withEnds(s: Segment, from: Point, to: Point): Segment {
  return s.kind === 'line' ? line(from, to, s.tag) : arcOf(from, to, s.centre, s.radius, s.turn, s.tag)
}

/** The same edge under a name, or under none. */
export function withTag(s: Segment, tag: string | undefined): Segment {
  return s.kind === 'line' ? line(s.from, s.to, tag) : arcOf(s.from, s.to, s.centre, s.radius, s.turn, tag)
}

/** The angle from the centre to the arc's first end, in radians, from −π to π, counted counter-clockwise from +x. */
export function startAngle(a: Arc): number {
  return Math.atan2(a.from.y - a.centre.y, a.from.x - a.centre.x)
}

/**
 * How far an arc turns, in radians: positive counter-clockwise, negative clockwise, never zero, its size below
 * 2π.
 */
export function sweep(a: Arc): number {
  const ux = a.from.x - a.centre.x
  const uy = a.from.y - a.centre.y
  const vx = a.to.x - a.centre.x
  const vy = a.to.y - a.centre.y
  const angle = Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy)
  if (a.turn === 1) return angle > 0 ? angle : angle + 2 * Math.PI
  return angle < 0 ? angle : angle - 2 * Math.PI
}
