import { coincident } from '../../number/tolerance.ts'
import { between, distance, type Point, type Vector } from '../shape/point.ts'
import { type Arc, type Line, type Segment, startAngle, sweep } from '../shape/segment.ts'
import { spans } from '../shape/span.ts'
import { leftOf, tangentAt, unit } from './along.ts'
import { leadsLeft } from './left-side.ts'
import { nearestOnSegment } from './nearest.ts'

/** A straight cut from one boundary to another, and its length in millimetres. */
export type Chord = {
  readonly first: Point
  readonly second: Point
  readonly width: number
  /** Where a whole stretch is equally narrow: the stretch, of which this cut is the middle. */
  readonly stretch?: Stretch
}

/**
 * A stretch that is equally narrow from the place `low` to the place `high`: millimetres along parallel lines,
 * radians around concentric arcs.
 */
export type Stretch = {
  readonly low: number
  readonly high: number
  /** The length of the stretch, in millimetres. */
  readonly length: number
  readonly cutAt: (place: number) => Pick<Chord, 'first' | 'second' | 'width'>
  /** The places between which an edge lies, or its whole circle. */
  readonly extent: (s: Segment) => readonly [number, number]
}

const fullTurn = 2 * Math.PI

/** An edge and the one before it, so the corner where it starts is known. The wood is to the left of both. */
export type Edge = { readonly before: Segment; readonly segment: Segment }

/**
 * The cuts between two edges, or between their starting corners, that cannot be shortened by sliding their
 * ends: those with both ends square to the boundary, or within the opening of a corner that points into the
 * wood. Where a whole stretch is equally narrow (parallel lines, concentric arcs), the cut in its middle.
 *
 * Source: for ends on edges of curvature k₁ and k₂ (positive when bulging into the wood) and a cut of length
 * d, the second derivative of the length is not negative when k₁ + k₂ + d·k₁·k₂ ≥ 0.
 */
export function neckChords(a: Edge, b: Edge): readonly Chord[] {
  const chords: Chord[] = []
  const add = (chord: Chord | undefined) => {
    if (chord !== undefined && chord.width > coincident) chords.push(chord)
  }
  add(acrossEdges(a.segment, b.segment))
  add(fromCorner(a, b))
  add(flip(fromCorner(b, a)))
  const p = a.segment.from
  const q = b.segment.from
  if (opensToward(a, q) && opensToward(b, p)) add({ first: p, second: q, width: distance(p, q) })
  return chords
}

function flip(chord: Chord | undefined): Chord | undefined {
  if (chord === undefined) return undefined
  const { first, second, width, stretch } = chord
  const turned = { first: second, second: first, width }
  if (stretch === undefined) return turned
  const cutAt = (place: number) => {
    const cut = stretch.cutAt(place)
    return { first: cut.second, second: cut.first, width: cut.width }
  }
  return { ...turned, stretch: { ...stretch, cutAt } }
}

/** From the starting corner of `a` to the inside of the edge of `b`. */
function fromCorner(a: Edge, b: Edge): Chord | undefined {
  const corner = a.segment.from
  if (corner === b.segment.from || corner === b.segment.to) return undefined
  const { point, distance: width } = nearestOnSegment(b.segment, corner)
  if (point === b.segment.from || point === b.segment.to) return undefined
  if (!opensToward(a, point) || !leadsLeft(b.segment, point, corner)) return undefined
  return { first: corner, second: point, width }
}

/**
 * Whether the boundary turns right at the edge's start, and `p` lies within the opening there: neither way
 * along the boundary leads nearer to it. An end that would move by less than `coincident` has arrived.
 */
function opensToward({ before, segment }: Edge, p: Point): boolean {
  const arrive = tangentAt(before, 1)
  const leave = tangentAt(segment, 0)
  if (!(arrive.x * leave.y - arrive.y * leave.x < 0)) return false
  const to = between(segment.from, p)
  return dot(to, arrive) >= -coincident && dot(to, leave) <= coincident
}

function acrossEdges(a: Segment, b: Segment): Chord | undefined {
  if (a.kind === 'line') return b.kind === 'line' ? acrossLines(a, b) : acrossLineAndArc(a, b)
  if (b.kind === 'line') return flip(acrossLineAndArc(b, a))
  return acrossArcs(a, b)
}

function acrossLines(a: Line, b: Line): Chord | undefined {
  const along = unit(between(a.from, a.to))
  const length = distance(a.from, a.to)
  const normal = leftOf(along)
  const place = (p: Point) => dot(between(a.from, p), along)
  const height = (p: Point) => dot(between(a.from, p), normal)
  // the other runs back the other way, over this one, at one height
  const low = Math.max(0, place(b.to))
  const high = Math.min(length, place(b.from))
  if (!(high - low > coincident)) return undefined
  const slope = (height(b.from) - height(b.to)) / (place(b.from) - place(b.to))
  if (!(Math.abs(slope) * (high - low) <= coincident)) return undefined
  const cutAt = (at: number) => {
    const width = height(b.to) + slope * (at - place(b.to))
    const first = { x: a.from.x + along.x * at, y: a.from.y + along.y * at }
    return { first, second: { x: first.x + normal.x * width, y: first.y + normal.y * width }, width }
  }
  const extent = (s: Segment): readonly [number, number] => {
    if (s.kind === 'arc') return [place(s.centre) - s.radius, place(s.centre) + s.radius]
    return [Math.min(place(s.from), place(s.to)), Math.max(place(s.from), place(s.to))]
  }
  const middle = cutAt((low + high) / 2)
  if (!(middle.width > 0)) return undefined
  return { ...middle, stretch: { low, high, length: high - low, cutAt, extent } }
}

function acrossLineAndArc(l: Line, a: Arc): Chord | undefined {
  if (a.turn === 1) return undefined
  const foot = nearestOnSegment(l, a.centre)
  if (foot.point === l.from || foot.point === l.to) return undefined
  if (!leadsLeft(l, foot.point, a.centre) || !spans(a, foot.point)) return undefined
  const top = onCircle(a, unit(between(a.centre, foot.point)))
  return { first: foot.point, second: top, width: foot.distance - a.radius }
}

function acrossArcs(a: Arc, b: Arc): Chord | undefined {
  if (a.turn === 1 && b.turn === 1) return undefined
  if (a.turn === -1 && b.turn === -1) {
    const u = unit(between(a.centre, b.centre))
    return bothSpan(a, onCircle(a, u), b, onCircle(b, { x: -u.x, y: -u.y }))
  }
  return a.turn === -1 ? acrossRing(a, b) : flip(acrossRing(b, a))
}

/** From an arc that bulges into the wood to one around it. */
function acrossRing(inner: Arc, outer: Arc): Chord | undefined {
  if (distance(inner.centre, outer.centre) > coincident) {
    const u = unit(between(outer.centre, inner.centre))
    return bothSpan(inner, onCircle(inner, u), outer, onCircle(outer, u))
  }
  const shared = commonDirections(inner, outer)
  if (shared === undefined) return undefined
  const [low, high] = shared
  const cutAt = (angle: number) => {
    const u = { x: Math.cos(angle), y: Math.sin(angle) }
    const first = onCircle(inner, u)
    const second = onCircle(outer, u)
    return { first, second, width: distance(first, second) }
  }
  const extent = (s: Segment): readonly [number, number] => {
    if (s.kind === 'arc' && s.radius < distance(s.centre, inner.centre)) {
      const middle = angleFrom(low, inner.centre, s.centre)
      const aside = Math.asin(s.radius / distance(s.centre, inner.centre))
      return [middle - aside, middle + aside]
    }
    const from = angleFrom(low, inner.centre, s.from)
    const to = angleFrom(low, inner.centre, s.to)
    return [Math.min(from, to), Math.max(from, to)]
  }
  const middle = cutAt((low + high) / 2)
  const usable = bothSpan(inner, middle.first, outer, middle.second)
  return usable && { ...usable, stretch: { low, high, length: (high - low) * inner.radius, cutAt, extent } }
}

/** The direction from `centre` to `p`, in radians from `start` up to a full turn more. */
function angleFrom(start: number, centre: Point, p: Point): number {
  const ahead = (Math.atan2(p.y - centre.y, p.x - centre.x) - start) % fullTurn
  return start + (ahead < 0 ? ahead + fullTurn : ahead)
}

function bothSpan(a: Arc, first: Point, b: Arc, second: Point): Chord | undefined {
  if (!spans(a, first) || !spans(b, second)) return undefined
  if (!leadsLeft(a, first, second) || !leadsLeft(b, second, first)) return undefined
  return { first, second, width: distance(first, second) }
}

/** The first stretch of directions that two concentric arcs both sweep, in radians. */
function commonDirections(a: Arc, b: Arc): readonly [number, number] | undefined {
  const cone = (s: Arc) => {
    const angle = sweep(s)
    return { start: angle > 0 ? startAngle(s) : startAngle(s) + angle, width: Math.abs(angle) }
  }
  const p = cone(a)
  const q = cone(b)
  const ahead = (((q.start - p.start) % fullTurn) + fullTurn) % fullTurn
  const [start, width] =
    ahead < p.width
      ? [p.start + ahead, Math.min(p.width - ahead, q.width)]
      : [p.start, Math.min(p.width, q.width - (fullTurn - ahead))]
  return width * a.radius > coincident ? [start, start + width] : undefined
}

function onCircle({ centre, radius }: Arc, u: Vector): Point {
  return { x: centre.x + u.x * radius, y: centre.y + u.y * radius }
}

function dot(u: Vector, v: Vector): number {
  return u.x * v.x + u.y * v.y
}
