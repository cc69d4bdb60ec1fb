import { float64Array, int8Array, int32Array } from '../boolean/memory.ts'
import type { BoxTree } from './box-tree.ts'
import { type Crossings, directionAt } from './find-crossings.ts'
import { angleAlong, type PackedCurve, stride } from './packed-curve.ts'
import { noWinding, windingRightOf } from './winding-number.ts'

/**
 * The crossings of a curve in the order in which it passes them. Event `e` is the passing of crossing
 * `crossing[e]` on segment `segment[e]` at `place[e]` along it (mm on a line, radians on an arc); every
 * crossing has two events, `other[e]` is the second.
 */
export type Walk = {
  readonly count: number
  readonly crossing: Int32Array
  readonly segment: Int32Array
  readonly place: Float64Array
  readonly other: Int32Array
  /** What the winding number on the right changes by when the event is passed. */
  readonly change: Int8Array
  /** The first event on each segment, and last of all the number of events. */
  readonly startOn: Int32Array
  readonly crossings: Crossings
}

export function orderEvents(curve: PackedCurve, crossings: Crossings): Walk {
  const n = crossings.count
  const { memory } = curve
  const startOn = int32Array(memory, curve.count + 1)
  for (let c = 0; c < n; c++) {
    startOn[crossings.first[c]! + 1]!++
    startOn[crossings.second[c]! + 1]!++
  }
  for (let k = 0; k < curve.count; k++) startOn[k + 1]! += startOn[k]!
  const fill = int32Array(memory, startOn.length)
  fill.set(startOn)
  const crossing = int32Array(memory, 2 * n)
  const segment = int32Array(memory, 2 * n)
  const place = float64Array(memory, 2 * n)
  const insert = (k: number, c: number): void => {
    const t = placeAlong(curve.data, k, crossings.places[2 * c]!, crossings.places[2 * c + 1]!)
    let e = fill[k]!++
    while (e > startOn[k]! && place[e - 1]! > t) {
      place[e] = place[e - 1]!
      crossing[e] = crossing[e - 1]!
      e--
    }
    place[e] = t
    crossing[e] = c
  }
  for (let c = 0; c < n; c++) {
    insert(crossings.first[c]!, c)
    insert(crossings.second[c]!, c)
  }
  for (let k = 0; k < curve.count; k++) segment.fill(k, startOn[k]!, startOn[k + 1]!)

  const other = int32Array(memory, 2 * n)
  const change = int8Array(memory, 2 * n)
  const seen = int32Array(memory, n).fill(-1)
  const u = float64Array(memory, 2)
  const v = float64Array(memory, 2)
  for (let e = 0; e < 2 * n; e++) {
    const c = crossing[e]!
    const x = crossings.places[2 * c]!
    const y = crossings.places[2 * c + 1]!
    const mine = segment[e]!
    const theirs = crossings.first[c] === mine ? crossings.second[c]! : crossings.first[c]!
    directionAt(curve.data, mine, x, y, u)
    directionAt(curve.data, theirs, x, y, v)
    // who is crossed from right to left comes out on the side where the number is lower
    change[e] = u[0]! * v[1]! - u[1]! * v[0]! > 0 ? -1 : 1
    if (seen[c]! < 0) seen[c] = e
    else {
      other[e] = seen[c]!
      other[seen[c]!] = e
    }
  }
  return { count: 2 * n, crossing, segment, place, other, change, startOn, crossings }
}

/** How far along segment `k` a point on it lies: mm on a line, radians on an arc. */
function placeAlong(data: Float64Array, k: number, x: number, y: number): number {
  const at = k * stride
  const turn = data[at + 7]!
  if (turn === 0) return (x - data[at]!) * data[at + 4]! + (y - data[at + 1]!) * data[at + 5]!
  const cx = data[at + 4]!
  const cy = data[at + 5]!
  return angleAlong(turn, data[at]! - cx, data[at + 1]! - cy, x - cx, y - cy)
}

function lengthOf(data: Float64Array, k: number): number {
  const at = k * stride
  return data[at + 7] === 0 ? data[at + 6]! : placeAlong(data, k, data[at + 2]!, data[at + 3]!)
}

/**
 * The winding number on the right of the chain of segments from `begin` up to `end`, before its first event;
 * `noWinding` when no ray could be found that keeps clear of everything.
 */
export function windingAtStart(
  curve: PackedCurve,
  tree: BoxTree,
  walk: Walk,
  begin: number,
  end: number,
): number {
  const spot: Spot = { x: 0, y: 0, rise: 0, passed: 0 }
  let k = steepest(curve, walk, begin, end)
  for (let attempt = 0; attempt < rays; attempt++) {
    findSpot(curve, walk, k, splits[attempt % splits.length]!, spot)
    if (Math.abs(spot.rise) > leastRise) {
      const winding = windingRightOf(curve, tree, k, spot.x, spot.y, spot.rise > 0)
      if (!Number.isNaN(winding)) {
        let changed = 0
        for (let e = walk.startOn[begin]!; e < spot.passed; e++) changed += walk.change[e]!
        return winding - changed
      }
    }
    k = begin + ((k - begin + 1 + Math.floor((end - begin) / rays)) % (end - begin))
  }
  return noWinding
}

/** How many rays are tried, and where between two events they begin; a level start cannot tell left from right. */
const rays = 24
const splits = [0.5, 0.37, 0.71, 0.19, 0.83]
const leastRise = 0.05

type Spot = { x: number; y: number; rise: number; passed: number }

function steepest(curve: PackedCurve, walk: Walk, begin: number, end: number): number {
  const { data } = curve
  let best = begin
  let height = -1
  for (let k = begin; k < end; k++) {
    if (walk.startOn[k] !== walk.startOn[k + 1]) continue
    const h = Math.abs(data[k * stride + 3]! - data[k * stride + 1]!)
    if (h > height) {
      height = h
      best = k
    }
  }
  return best
}

/** A point in the widest stretch of segment `k` between two events, `split` of the way along it. */
function findSpot(curve: PackedCurve, walk: Walk, k: number, split: number, spot: Spot): void {
  const { data } = curve
  const from = walk.startOn[k]!
  const to = walk.startOn[k + 1]!
  const length = lengthOf(data, k)
  let low = 0
  let widest = -1
  let begin = 0
  let passed = from
  for (let e = from; e <= to; e++) {
    const high = e === to ? length : walk.place[e]!
    if (high - low > widest) {
      widest = high - low
      begin = low
      passed = e
    }
    low = high
  }
  const place = begin + split * widest
  const at = k * stride
  const turn = data[at + 7]!
  spot.passed = passed
  if (turn === 0) {
    spot.x = data[at]! + place * data[at + 4]!
    spot.y = data[at + 1]! + place * data[at + 5]!
    spot.rise = data[at + 5]!
    return
  }
  const cx = data[at + 4]!
  const cy = data[at + 5]!
  const cos = Math.cos(place)
  const sin = turn * Math.sin(place)
  const ax = data[at]! - cx
  const ay = data[at + 1]! - cy
  const bx = ax * cos - ay * sin
  spot.x = cx + bx
  spot.y = cy + ax * sin + ay * cos
  spot.rise = (turn * bx) / data[at + 6]!
}
