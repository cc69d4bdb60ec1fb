import { int8Array, int32Array } from '../boolean/memory.ts'
import type { BoxTree } from './box-tree.ts'
import type { Crossings } from './find-crossings.ts'
import type { PackedCurve } from './packed-curve.ts'
import { orderEvents, type Walk, windingAtStart } from './walk.ts'

/** The boundary of the points with a positive winding number: chains that belong to it whole, and rings made of parts. */
export type Boundary = {
  /** First segment of each whole chain, and the one after its last. */
  readonly chains: readonly (readonly [number, number])[]
  /** Where the parts of each ring begin and end in `parts`. */
  readonly rings: readonly (readonly [number, number])[]
  readonly parts: Parts
}

/** Parts of segments in the order of the boundary: each begins at a crossing, or where its segment does (−1). */
export type Parts = {
  count: number
  readonly segment: Int32Array
  readonly crossing: Int32Array
  /** x and y of each crossing. */
  readonly places: Float64Array
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
  const rings: [number, number][] = []
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
  // an event parts a segment once more
  const room = curve.count + walk.count
  const parts: Parts = {
    count: 0,
    segment: int32Array(curve.memory, room),
    crossing: int32Array(curve.memory, room),
    places: crossings.places,
  }
  for (let e = 0; e < walk.count; e++) {
    if (kept[e] === 0) continue
    const begin = parts.count
    if (!followRing(curve, walk, e, kept, following, parts)) return undefined
    rings.push([begin, parts.count])
  }
  return { chains: whole, rings, parts }
}

/**
 * Follows the boundary from event `first` round to it again, and takes its stretches out of `kept`.
 *
 * @returns whether it came round
 */
function followRing(
  curve: PackedCurve,
  walk: Walk,
  first: number,
  kept: Int8Array,
  following: Int32Array,
  parts: Parts,
): boolean {
  const add = (k: number, crossing: number): void => {
    parts.segment[parts.count] = k
    parts.crossing[parts.count++] = crossing
  }
  let e = first
  do {
    if (kept[e] === 0) return false
    kept[e] = 0
    const until = following[e]!
    const last = walk.segment[until]!
    let k = walk.segment[e]!
    add(k, walk.crossing[e]!)
    // a stretch that ends on its own segment before it begins there runs all the way round its chain
    if (k !== last || until <= e) {
      do {
        k = curve.next[k]!
        add(k, -1)
      } while (k !== last)
    }
    e = walk.other[until]!
  } while (e !== first)
  return true
}
