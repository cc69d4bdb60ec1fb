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

/** An edge between its neighbours, so the corners where it starts and ends are known. The wood is to the left of all. */
export type Edge = { readonly before: Segment; readonly segment: Segment; readonly after: Segment }

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
  const add = (chord: Chord | undefined, bendA: number, bendB: number) => {
    if (chord === undefined || !(chord.width > coincident)) return
    const { first, second } = chord
    if (restsAtJoint(a, first, second, bendB) && restsAtJoint(b, second, first, bendA)) chords.push(chord)
  }
  add(acrossEdges(a.segment, b.segment), curvature(a.segment), curvature(b.segment))
  add(fromCorner(a, b), Infinity, curvature(b.segment))
  add(flip(fromCorner(b, a)), curvature(a.segment), Infinity)
  const p = a.segment.from
  const q = b.segment.from
  const chord = { first: p, second: q, width: distance(p, q) }
  if (turnsRight(a) && turnsRight(b) && leavesSquare(a, q) && leavesSquare(b, p))
    add(chord, Infinity, Infinity)
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

/** From the starting corner of `a` to the edge of `b`, but not to where that ends: there the next one starts. */
function fromCorner(a: Edge, b: Edge): Chord | undefined {
  const corner = a.segment.from
  if (!turnsRight(a)) return undefined
  const { point, distance: width } = nearestOnSegment(b.segment, corner)
  if (meets(point, b.segment.to)) return undefined
  if (!leavesSquare(a, point) || !leadsLeft(b.segment, point, corner)) return undefined
  return { first: corner, second: point, width }
}

/** Whether the boundary turns right where the edge starts: the corner points into the wood. */
function turnsRight({ before, segment }: Edge): boolean {
  const arrive = tangentAt(before, 1)
  const leave = tangentAt(segment, 0)
  return arrive.x * leave.y - arrive.y * leave.x < 0
}

/** Whether the edge does not lead from its start nearer to `p`. */
function leavesSquare({ segment }: Edge, p: Point): boolean {
  return !leadsNearer(segment, segment.from, p, Infinity)
}

/**
 * Whether a cut's end that has come to a joint stays there: the neighbour beyond the joint leads no nearer to the
 * other end. Rounding puts an end beside a joint as well as on it, so the joint is told by distance.
 */
function restsAtJoint({ before, segment, after }: Edge, end: Point, other: Point, bend: number): boolean {
  if (meets(end, segment.from) && leadsNearer(before, segment.from, other, bend)) return false
  return !(meets(end, segment.to) && leadsNearer(after, segment.to, other, bend))
}

/**
 * Whether going along `s` from its end `start` leads nearer to the other end of a cut, which slides along an edge
 * of curvature `bend`, or stands on a corner: `Infinity`. An end that would move by less than `coincident` has
 * arrived; then the second derivative decides, which over a millimetre has to take away `coincident` to count.
 */
function leadsNearer(s: Segment, start: Point, other: Point, bend: number): boolean {
  const forward = meets(start, s.from)
  const tangent = tangentAt(s, forward ? 0 : 1)
  const to = between(start, other)
  const gain = forward ? dot(to, tangent) : -dot(to, tangent)
  if (Math.abs(gain) > coincident) return gain > 0
  const width = distance(start, other)
  const k = curvature(s)
  const second = bend === Infinity ? 1 / width + k : k + bend + width * k * bend
  return second / 2 < -coincident
}

/** Per millimetre, positive where the edge bulges into the wood. */
function curvature(s: Segment): number {
  return s.kind === 'line' ? 0 : -s.turn / s.radius
}

function meets(p: Point, q: Point): boolean {
  return distance(p, q) <= coincident
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
  if (!leadsLeft(l, foot.point, a.centre)) return undefined
  const top = onCircle(a, unit(between(a.centre, foot.point)))
  if (!reaches(a, top)) return undefined
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
  if (!reaches(a, first) || !reaches(b, second)) return undefined
  if (!leadsLeft(a, first, second) || !leadsLeft(b, second, first)) return undefined
  return { first, second, width: distance(first, second) }
}

/** Whether a point of the arc's circle lies on the arc. */
function reaches(a: Arc, p: Point): boolean {
  return spans(a, p) || meets(p, a.from) || meets(p, a.to)
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
