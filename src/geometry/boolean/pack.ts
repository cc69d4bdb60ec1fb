import { coincident } from '../../number/tolerance.ts'
import type { Contour } from '../shape/contour.ts'
import type { Point } from '../shape/point.ts'
import type { Segment } from '../shape/segment.ts'
import { beginRun, createMemory, float64Array, int8Array, int32Array, type Memory } from './memory.ts'

/**
 * Closed contours as plain numbers, ready to be overlaid. A segment runs from vertex `from` to vertex `to`; a
 * radius of 0 makes it straight, and a `turn` of 0 says that it comes from a line: an arc that stands no farther
 * than `coincident` from its chord is packed as straight and may become part of an arc again. `first` and `second` say by how much the winding number of the first and the
 * second operand is larger on the left of the segment than on its right.
 *
 * No packed arc turns more than a half turn (longer ones are packed as two), so that the distance along the
 * chord orders the points of an arc, and a short chord means a short arc.
 */
export type Pack = {
  /** Where the arrays of the run come from that this is the input of. */
  readonly memory: Memory
  vertexCount: number
  x: Float64Array
  y: Float64Array
  /** One more than the number of the source that begins at a vertex, so that results share its point; 0 for none. */
  begins: Int32Array

  segmentCount: number
  from: Int32Array
  to: Int32Array
  centreX: Float64Array
  centreY: Float64Array
  radius: Float64Array
  turn: Int8Array
  first: Int32Array
  second: Int32Array
  /** Which of the segments that were put in this one is, or is a part of. */
  source: Int32Array

  sourceCount: number
  readonly origins: Origin[]
  /** The number of the first segment of every contour. */
  readonly contourStart: number[]

  /** The operand that contours are being added to; of the one being drawn, the tags, the first vertex and the last so far. */
  operand: 0 | 1
  weight: number
  tags: (string | undefined)[]
  startVertex: number
  at: number
  /** Of the contour that was added last: more than 0 where it surely runs counter-clockwise, less than 0 clockwise. */
  lean: number
}

/**
 * What was put in, contour by contour: its segments, or the tags of one that was drawn, the first of them being source
 * `first`. A list of them all would be as long as the input, and new for every boolean.
 */
type Origin = { readonly first: number; readonly sources: readonly (Segment | string | undefined)[] }

/** How many bytes a boolean takes for each segment, about. */
const bytesEach = 192

/** @param memory of a run that has ended, to be used again */
export function createPack(segments = 64, memory = createMemory()): Pack {
  const n = segments
  beginRun(memory, bytesEach * (n + 8))
  // crossings become vertices too, and of contours there are usually few
  const vertices = n + (n >> 2) + 8
  return {
    memory,
    vertexCount: 0,
    x: float64Array(memory, vertices),
    y: float64Array(memory, vertices),
    begins: int32Array(memory, vertices),
    segmentCount: 0,
    from: int32Array(memory, n),
    to: int32Array(memory, n),
    centreX: float64Array(memory, n),
    centreY: float64Array(memory, n),
    radius: float64Array(memory, n),
    turn: int8Array(memory, n),
    first: int32Array(memory, n),
    second: int32Array(memory, n),
    source: int32Array(memory, n),
    sourceCount: 0,
    origins: [],
    contourStart: [],
    operand: 0,
    weight: 1,
    tags: [],
    startVertex: -1,
    at: -1,
    lean: 0,
  }
}

/** A longer copy of a typed array. */
export function grown<T extends Float64Array | Int32Array | Int8Array>(array: T, length: number): T {
  const longer = new (array.constructor as new (length: number) => T)(length)
  longer.set(array)
  return longer
}

export function addVertex(pack: Pack, x: number, y: number): number {
  const v = pack.vertexCount++
  if (v === pack.x.length) growVertices(pack, v)
  pack.x[v] = x
  pack.y[v] = y
  return v
}

/** The segment that a source is, or the tag of a drawn one. */
export function sourceAt({ origins }: Pack, source: number): Segment | string | undefined {
  let low = 0
  let high = origins.length
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (origins[middle]!.first <= source) low = middle
    else high = middle
  }
  const { first, sources } = origins[low]!
  return sources[source - first]
}

/** The point of the input that a vertex was made of. */
export function pointAt(pack: Pack, v: number): Point | undefined {
  const begins = pack.begins[v]!
  if (begins === 0) return undefined
  const source = sourceAt(pack, begins - 1)
  return typeof source === 'object' ? source.from : undefined
}

/** Adds a segment as it stands: the caller keeps arcs to half a turn. */
export function addSegment(
  pack: Pack,
  from: number,
  to: number,
  cx: number,
  cy: number,
  radius: number,
  turn: number,
  first: number,
  second: number,
  source: number,
): void {
  const s = pack.segmentCount++
  if (s === pack.from.length) growSegments(pack, 2 * s + 8)
  pack.from[s] = from
  pack.to[s] = to
  pack.centreX[s] = cx
  pack.centreY[s] = cy
  pack.radius[s] = radius
  pack.turn[s] = turn
  pack.first[s] = first
  pack.second[s] = second
  pack.source[s] = source
}

function growVertices(pack: Pack, count: number): void {
  pack.x = grown(pack.x, 2 * count + 8)
  pack.y = grown(pack.y, 2 * count + 8)
  pack.begins = grown(pack.begins, 2 * count + 8)
}

function growSegments(pack: Pack, length: number): void {
  pack.from = grown(pack.from, length)
  pack.to = grown(pack.to, length)
  pack.centreX = grown(pack.centreX, length)
  pack.centreY = grown(pack.centreY, length)
  pack.radius = grown(pack.radius, length)
  pack.turn = grown(pack.turn, length)
  pack.first = grown(pack.first, length)
  pack.second = grown(pack.second, length)
  pack.source = grown(pack.source, length)
}

/** Starts a contour at a point. What it encloses counter-clockwise has its winding number in the first operand raised by one. */
export function moveTo(pack: Pack, x: number, y: number): void {
  pack.tags = []
  beginContour(pack, 0, 1, pack.tags)
  pack.startVertex = addVertex(pack, x, y)
  pack.at = pack.startVertex
}

function beginContour(pack: Pack, operand: 0 | 1, weight: number, sources: Origin['sources']): void {
  pack.operand = operand
  pack.weight = weight
  pack.contourStart.push(pack.segmentCount)
  pack.origins.push({ first: pack.sourceCount, sources })
}

/** A straight segment from where the contour has got to. */
export function lineTo(pack: Pack, x: number, y: number, tag?: string): void {
  addSide(pack, addVertex(pack, x, y), addTag(pack, tag))
}

/** An arc from where the contour has got to, about a centre; `turn` 1 is counter-clockwise. Less than a full turn. */
export function arcTo(
  pack: Pack,
  x: number,
  y: number,
  cx: number,
  cy: number,
  turn: 1 | -1,
  tag?: string,
): void {
  const radius = Math.hypot(pack.x[pack.at]! - cx, pack.y[pack.at]! - cy)
  const s = addSide(pack, addVertex(pack, x, y), addTag(pack, tag))
  pack.centreX[s] = cx
  pack.centreY[s] = cy
  pack.radius[s] = radius
  bend(pack, s, turn)
}

/** Ends a contour: its last point becomes its first where the two are one, else a straight segment closes it. */
export function closePath(pack: Pack): void {
  const { at, startVertex: start } = pack
  if (at === start) return
  const gap = Math.hypot(pack.x[at]! - pack.x[start]!, pack.y[at]! - pack.y[start]!)
  if (gap <= coincident) pack.to[pack.segmentCount - 1] = start
  else addSide(pack, start, addTag(pack, undefined))
}

/**
 * Twice the area of a circular segment that is no more than half a circle lies between nothing and π/4 of the square of
 * its chord: this much around the middle.
 */
export const halfRange = Math.PI / 8

/**
 * Adds a closed contour as it runs. A contour whose neighbours do not share their points is closed by the
 * caller first (`mend`): a gap below `coincident` is taken as shared, a larger one is a fault.
 *
 * @returns the number of the segment that ends away from the start of the next, or that has a number that is
 *   none; −1 when all is well
 */
export function addContour(pack: Pack, contour: Contour, operand: 0 | 1, weight: number): number {
  const { segments } = contour
  const count = segments.length
  if (count === 0) return -1
  const start = segments[0]!.from
  const first = pack.sourceCount
  beginContour(pack, operand, weight, segments)
  pack.sourceCount += count
  pack.startVertex = addPoint(pack, start, first)
  pack.at = pack.startVertex
  // twice the area between the chords, and between what bounds twice that of the arcs
  let chords = 0
  let arcs = 0
  let doubt = 0
  let ux = 0
  let uy = 0
  for (let i = 0; i < count; i++) {
    const s = segments[i]!
    const next = segments[i + 1 === count ? 0 : i + 1]!.from
    if (s.to !== next && !(Math.hypot(s.to.x - next.x, s.to.y - next.y) <= coincident)) return i
    if (!Number.isFinite(next.x + next.y)) return i
    if (s.kind === 'arc') {
      const { x, y } = s.centre
      if (!(Number.isFinite(x + y) && s.radius > 0 && s.radius < Infinity)) return i
    }
    const to = i + 1 === count ? pack.startVertex : addPoint(pack, next, first + i + 1)
    const side = addSide(pack, to, first + i)
    const vx = next.x - start.x
    const vy = next.y - start.y
    chords += ux * vy - uy * vx
    if (s.kind === 'arc') {
      pack.centreX[side] = s.centre.x
      pack.centreY[side] = s.centre.y
      pack.radius[side] = s.radius
      bend(pack, side, s.turn)
      const range =
        side + 1 === pack.segmentCount
          ? halfRange * ((vx - ux) * (vx - ux) + (vy - uy) * (vy - uy))
          : Infinity
      if (s.turn === 1) arcs += range
      else arcs -= range
      doubt += range
    }
    ux = vx
    uy = vy
  }
  const twice = chords + arcs
  pack.lean = Math.abs(twice) > doubt ? twice : 0
  return -1
}

/** Gives the segments from `begin` on another weight than they were added with. */
export function weigh(pack: Pack, begin: number, operand: 0 | 1, weight: number): void {
  const windings = operand === 0 ? pack.first : pack.second
  windings.fill(weight, begin, pack.segmentCount)
}

/** Whether an arc of less than a half turn stands no farther from its chord than `coincident`. */
export function isFlat(chordSquared: number, radius: number): boolean {
  return chordSquared <= 8 * radius * coincident
}

function addTag(pack: Pack, tag: string | undefined): number {
  pack.tags.push(tag)
  return pack.sourceCount++
}

/** The vertex of a point where source number `source` begins. Numbers are handed on in arrays here, since the engine packs each that a call takes anew. */
function addPoint(pack: Pack, point: Point, source: number): number {
  const v = pack.vertexCount++
  if (v === pack.x.length) growVertices(pack, v)
  pack.x[v] = point.x
  pack.y[v] = point.y
  pack.begins[v] = source + 1
  return v
}

/** Adds a straight segment from where the contour has got to, and gives its number. */
function addSide(pack: Pack, to: number, source: number): number {
  const { operand, weight } = pack
  const s = pack.segmentCount++
  if (s === pack.from.length) growSegments(pack, 2 * s + 8)
  // what is not written is 0: no place of an array is used twice
  pack.from[s] = pack.at
  pack.to[s] = to
  if (operand === 0) pack.first[s] = weight
  else pack.second[s] = weight
  pack.source[s] = source
  pack.at = to
  return s
}

/**
 * Makes an arc of the segment that was added last, when it has its centre and radius: two arcs where it turns more
 * than half, and a straight one where it hardly turns at all.
 */
function bend(pack: Pack, s: number, turn: 1 | -1): void {
  const cx = pack.centreX[s]!
  const cy = pack.centreY[s]!
  const radius = pack.radius[s]!
  const from = pack.from[s]!
  const to = pack.to[s]!
  const ux = pack.x[from]! - cx
  const uy = pack.y[from]! - cy
  const vx = pack.x[to]! - cx
  const vy = pack.y[to]! - cy
  const cross = turn * (ux * vy - uy * vx)
  const dot = ux * vx + uy * vy
  pack.turn[s] = turn
  // past a half turn the sine of the sweep is negative; an arc back to its own start is a full circle
  if (cross < 0 || (cross === 0 && dot > 0)) {
    // the middle of the arc: against the bisector of its ends, or square to the chord where that is longer
    const mx = dot > 0 ? -(ux + vx) : turn * (vy - uy)
    const my = dot > 0 ? -(uy + vy) : -turn * (vx - ux)
    const size = radius / Math.hypot(mx, my)
    const middle = addVertex(pack, cx + mx * size, cy + my * size)
    pack.to[s] = middle
    pack.at = middle
    const rest = addSide(pack, to, pack.source[s]!)
    pack.centreX[rest] = cx
    pack.centreY[rest] = cy
    pack.radius[rest] = radius
    pack.turn[rest] = turn
    return
  }
  const dx = vx - ux
  const dy = vy - uy
  if (cross > 0 && dot > 0 && isFlat(dx * dx + dy * dy, radius)) pack.radius[s] = 0
}
