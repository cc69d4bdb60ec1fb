import { int8Array, int32Array } from '../boolean/memory.ts'
import type { Point } from '../shape/point.ts'
import type { BoxTree } from './box-tree.ts'
import type { Crossings } from './find-crossings.ts'
import { type PackedCurve, stride } from './packed-curve.ts'
import { orderEvents, type Walk, windingAtStart } from './walk.ts'

/** A closed part of a curve: its segments in order, and the point where each of them begins. */
export type Ring = { readonly segments: number[]; readonly points: Point[] }

/** The boundary of the points with a positive winding number: chains that belong to it whole, and rings made of parts. */
export type Boundary = {
  /** First segment of each whole chain, and the one after its last. */
  readonly chains: readonly (readonly [number, number])[]
  readonly rings: readonly Ring[]
}

/**
 * The boundary of the points with a positive winding number, as rings that run with those points on their
 * left. Along the curve the winding number on the right changes by one where it crosses itself, so one ray for
 * each chain and a walk along it give the number everywhere; the stretches with 0 on their right and 1 on
 * their left are the boundary, and at a crossing each of them leads on to exactly one other.
 *
 * @returns undefined when the numbers contradict each other, which plain crossings cannot do
 */
export function trimByWinding(curve: PackedCurve, tree: BoxTree, crossings: Crossings): Boundary | undefined {
  const walk = orderEvents(curve, crossings)
  const whole: [number, number][] = []
  const rings: Ring[] = []
  const kept = int8Array(curve.memory, walk.count)
  /** For the last event of a chain the chain's first, for every other the one after it. */
  const following = int32Array(curve.memory, walk.count)
  const { chains } = curve
  for (let c = 0; c < chains.length; c++) {
    const begin = chains[c]!
    const end = c + 1 === chains.length ? curve.count : chains[c + 1]!
    let winding = windingAtStart(curve, tree, walk, begin, end)
    if (Number.isNaN(winding)) return undefined
    const from = walk.startOn[begin]!
    const to = walk.startOn[end]!
    if (from === to) {
      if (winding === 0) whole.push([begin, end])
      continue
    }
    const atStart = winding
    for (let e = from; e < to; e++) {
      winding += walk.change[e]!
      kept[e] = winding === 0 ? 1 : 0
      following[e] = e + 1 === to ? from : e + 1
    }
    if (winding !== atStart) return undefined
  }
  const points: (Point | undefined)[] = new Array(crossings.count)
  for (let e = 0; e < walk.count; e++) {
    if (kept[e] === 0) continue
    const ring = followRing(curve, walk, e, kept, following, points)
    if (ring === undefined) return undefined
    rings.push(ring)
  }
  return { chains: whole, rings }
}

function startOf(curve: PackedCurve, k: number): Point {
  return { x: curve.data[k * stride]!, y: curve.data[k * stride + 1]! }
}

/** Follows the boundary from event `first` round to it again, and takes its stretches out of `kept`. */
function followRing(
  curve: PackedCurve,
  walk: Walk,
  first: number,
  kept: Int8Array,
  following: Int32Array,
  points: (Point | undefined)[],
): Ring | undefined {
  const ring: Ring = { segments: [], points: [] }
  let e = first
  do {
    if (kept[e] === 0) return undefined
    kept[e] = 0
    const until = following[e]!
    const last = walk.segment[until]!
    let k = walk.segment[e]!
    ring.segments.push(k)
    ring.points.push(crossingPoint(walk, e, points))
    // a stretch that ends on its own segment before it begins there runs all the way round its chain
    if (k !== last || until <= e) {
      do {
        k = curve.next[k]!
        ring.segments.push(k)
        ring.points.push(startOf(curve, k))
      } while (k !== last)
    }
    e = walk.other[until]!
  } while (e !== first)
  return ring
}

function crossingPoint(walk: Walk, e: number, points: (Point | undefined)[]): Point {
  const c = walk.crossing[e]!
  const known = points[c]
  if (known !== undefined) return known
  const { places } = walk.crossings
  const made = { x: places[2 * c]!, y: places[2 * c + 1]! }
  points[c] = made
  return made
}
