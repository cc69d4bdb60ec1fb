import { coincident } from '../../number/tolerance.ts'
import { float64Array, int32Array, type Memory } from '../boolean/memory.ts'
import type { BoxTree } from './box-tree.ts'
import { type PackedCurve, stride } from './packed-curve.ts'
import { crossNeighbours, crossSegments, unclear } from './segment-crossings.ts'

/** Places where two segments of a curve cross; crossing `c` is that of segments first[c] and second[c]. */
export type Crossings = {
  count: number
  first: Int32Array
  second: Int32Array
  /** x and y of each, one after the other. */
  places: Float64Array
}

/**
 * All places where a curve crosses itself, or undefined when two of its segments touch, overlap or come within
 * `coincident` of an end, so that their crossing is no plain one.
 */
export function findCrossings(curve: PackedCurve, tree: BoxTree): Crossings | undefined {
  const { memory } = curve
  const found: Crossings = {
    count: 0,
    first: int32Array(memory, 16),
    second: int32Array(memory, 16),
    places: float64Array(memory, 32),
  }
  const search: Search = { curve, tree, found, clear: true, out: float64Array(memory, 4) }
  const top = tree.levels.length - 2
  if (curve.count > 1) searchWithin(search, top, 0)
  return search.clear ? found : undefined
}

type Search = {
  readonly curve: PackedCurve
  readonly tree: BoxTree
  readonly found: Crossings
  readonly out: Float64Array
  clear: boolean
}

/** Pairs inside one box: those inside either half, and those of one half with the other. */
function searchWithin(search: Search, level: number, node: number): void {
  if (level === 0 || !search.clear) return
  const { levels } = search.tree
  const below = level - 1
  const a = 2 * node
  const b = a + 1
  searchWithin(search, below, a)
  if (b >= levels[level]! - levels[below]!) return
  searchWithin(search, below, b)
  searchAcross(search, below, a, b)
}

/** Pairs of a segment in one box with a segment in another of the same level. */
function searchAcross(search: Search, level: number, a: number, b: number): void {
  const { boxes, levels } = search.tree
  const start = levels[level]!
  const p = 4 * (start + a)
  const q = 4 * (start + b)
  if (
    boxes[p]! > boxes[q + 2]! + coincident ||
    boxes[q]! > boxes[p + 2]! + coincident ||
    boxes[p + 1]! > boxes[q + 3]! + coincident ||
    boxes[q + 1]! > boxes[p + 3]! + coincident
  ) {
    return
  }
  if (level === 0) {
    testPair(search, a, b)
    return
  }
  const below = level - 1
  const count = start - levels[below]!
  const a1 = 2 * a + 1 < count
  const b1 = 2 * b + 1 < count
  searchAcross(search, below, 2 * a, 2 * b)
  if (b1) searchAcross(search, below, 2 * a, 2 * b + 1)
  if (a1) searchAcross(search, below, 2 * a + 1, 2 * b)
  if (a1 && b1) searchAcross(search, below, 2 * a + 1, 2 * b + 1)
}

function testPair(search: Search, i: number, j: number): void {
  const { curve, out } = search
  const { data, next } = curve
  let count: number
  if (next[i] === j) {
    const closes = next[j] === i
    count = curve.smooth[j] === 1 && !closes ? 0 : crossNeighbours(data, i, j, closes, out)
  } else if (next[j] === i) {
    count = curve.smooth[i] === 1 ? 0 : crossNeighbours(data, j, i, false, out)
  } else {
    count = crossSegments(data, i, j, out)
  }
  if (count === unclear) search.clear = false
  else if (count > 0) record(curve.memory, search.found, i, j, count, out)
}

function record(
  memory: Memory,
  found: Crossings,
  i: number,
  j: number,
  count: number,
  out: Float64Array,
): void {
  for (let k = 0; k < count; k++) {
    const c = found.count++
    if (c === found.first.length) {
      found.first = longer(memory, found.first)
      found.second = longer(memory, found.second)
      const places = float64Array(memory, 2 * found.places.length)
      places.set(found.places)
      found.places = places
    }
    found.first[c] = i
    found.second[c] = j
    found.places[2 * c] = out[2 * k]!
    found.places[2 * c + 1] = out[2 * k + 1]!
  }
}

function longer(memory: Memory, array: Int32Array): Int32Array {
  const result = int32Array(memory, 2 * array.length)
  result.set(array)
  return result
}

/** The direction of travel (not unit) of a segment at a point on it, to out[0], out[1]. */
export function directionAt(data: Float64Array, k: number, x: number, y: number, out: Float64Array): void {
  const at = k * stride
  const turn = data[at + 7]!
  if (turn === 0) {
    out[0] = data[at + 4]!
    out[1] = data[at + 5]!
  } else {
    const r = data[at + 6]!
    out[0] = (-turn * (y - data[at + 5]!)) / r
    out[1] = (turn * (x - data[at + 4]!)) / r
  }
}
