import { orientation } from '../../number/predicates.ts'
import type { Pack } from './pack.ts'
import type { Edges } from './split.ts'

/**
 * The arrangement as a graph. Half-edge 2e runs along edge e, 2e + 1 back along it. `next` leads round the face
 * on the left of a half-edge. An edge that coincides with another is `merged` into it, and one that changes no
 * winding number is left out; neither has half-edges then.
 */
export type Graph = {
  readonly next: Int32Array
  /** By how much the winding numbers are larger on the left of an edge. */
  readonly first: Int32Array
  readonly second: Int32Array
  /** The edge that stands for an edge: itself, the one it was merged into, or −1 where nothing is left. */
  readonly standsFor: Int32Array
}

/**
 * Sorts the edges round every vertex and links them. Where only two edges meet there is nothing to sort. Round
 * the others the order is by direction; edges that leave in nearly the same direction are compared where they
 * are farther apart, at the end of the shorter one or halfway there, with an exact sign if both are straight:
 * since edges do not cross, whoever is on the left there is on the left at the vertex.
 */
export function buildGraph(pack: Pack, edges: Edges, snap: number): Graph {
  const m = edges.count
  const first = new Int32Array(m)
  const second = new Int32Array(m)
  const standsFor = new Int32Array(m)
  for (let e = 0; e < m; e++) {
    const s = edges.segment[e]!
    first[e] = pack.first[s]!
    second[e] = pack.second[s]!
    standsFor[e] = e
  }
  let spokes = gatherSpokes(pack, edges, standsFor)
  if (mergeEdges(pack, edges, spokes, first, second, standsFor, snap))
    spokes = gatherSpokes(pack, edges, standsFor)

  const next = new Int32Array(2 * m).fill(-1)
  const { start, spoke } = spokes
  for (let v = 0; v < pack.vertexCount; v++) {
    const begin = start[v]!
    const end = start[v + 1]!
    if (end - begin > 2) sortRound(pack, edges, spoke, begin, end, snap)
    for (let k = begin; k < end; k++) {
      next[spoke[k]! ^ 1] = spoke[k === begin ? end - 1 : k - 1]!
    }
  }
  return { next, first, second, standsFor }
}

/** The half-edges that leave each vertex: those of v stand from start[v] up to start[v + 1]. */
type Spokes = { readonly start: Int32Array; readonly spoke: Int32Array }

function gatherSpokes(pack: Pack, edges: Edges, standsFor: Int32Array): Spokes {
  const n = pack.vertexCount
  const start = new Int32Array(n + 1)
  let live = 0
  for (let e = 0; e < edges.count; e++) {
    if (standsFor[e] !== e) continue
    start[edges.from[e]! + 1]!++
    start[edges.to[e]! + 1]!++
    live++
  }
  for (let v = 0; v < n; v++) start[v + 1]! += start[v]!
  const fill = start.slice(0, n)
  const spoke = new Int32Array(2 * live)
  for (let e = 0; e < edges.count; e++) {
    if (standsFor[e] !== e) continue
    spoke[fill[edges.from[e]!]!++] = 2 * e
    spoke[fill[edges.to[e]!]!++] = 2 * e + 1
  }
  return { start, spoke }
}

/**
 * Merges edges between the same two vertices that nowhere part by more than `snap`: their windings add
 * up, and where these cancel the edge is gone.
 */
function mergeEdges(
  pack: Pack,
  edges: Edges,
  { start, spoke }: Spokes,
  first: Int32Array,
  second: Int32Array,
  standsFor: Int32Array,
  snap: number,
): boolean {
  let any = false
  for (let v = 0; v < pack.vertexCount; v++) {
    const begin = start[v]!
    const end = start[v + 1]!
    if (end - begin < 2) continue
    if (end - begin > 8) {
      // with the other ends in order, only neighbours can coincide
      const far = (h: number) => (h & 1 ? edges.from[h >> 1]! : edges.to[h >> 1]!)
      spoke.subarray(begin, end).sort((g, h) => far(g) - far(h) || g - h)
    }
    for (let k = begin; k < end; k++) {
      const h = spoke[k]!
      const e = h >> 1
      const w = h & 1 ? edges.from[e]! : edges.to[e]!
      if (w < v || standsFor[e] !== e) continue
      for (let l = k + 1; l < end; l++) {
        const g = spoke[l]!
        const f = g >> 1
        if ((g & 1 ? edges.from[f]! : edges.to[f]!) !== w) {
          if (end - begin > 8) break
          continue
        }
        if (standsFor[f] !== f) continue
        if (Math.abs(bulge(pack, edges, h) - bulge(pack, edges, g)) > snap) continue
        const sign = (h & 1) === (g & 1) ? 1 : -1
        // the lower number stands for both, so a shared edge keeps the name of the first operand's
        const keep = Math.min(e, f)
        const gone = Math.max(e, f)
        first[keep]! += sign * first[gone]!
        second[keep]! += sign * second[gone]!
        standsFor[gone] = keep
        any = true
        if (keep !== e) break
      }
    }
  }
  if (!any) return false
  for (let e = 0; e < edges.count; e++) {
    let f = e
    while (standsFor[f]! !== f) f = standsFor[f]!
    standsFor[e] = f
  }
  for (let e = 0; e < edges.count; e++) {
    const f = standsFor[e]!
    if (first[f] === 0 && second[f] === 0) standsFor[e] = -1
  }
  return true
}

/** How far the middle of a half-edge lies to the right of its chord: the sagitta, positive for a left turn. */
function bulge(pack: Pack, edges: Edges, h: number): number {
  const e = h >> 1
  const half = halfTurn(pack, edges, e)
  if (half === 0) return 0
  const { x, y } = pack
  const a = edges.from[e]!
  const b = edges.to[e]!
  const sagitta = (Math.hypot(x[b]! - x[a]!, y[b]! - y[a]!) / 2) * Math.tan(half / 2)
  return h & 1 ? -sagitta : sagitta
}

/**
 * Half the angle an edge turns, positive to the left; 0 for a straight one. An edge is taken to be the arc of
 * that turn between its two vertices, wherever these were snapped to, so at its vertices it leaves its chord by
 * just this angle.
 */
function halfTurn(pack: Pack, edges: Edges, e: number): number {
  const s = edges.segment[e]!
  if (edges.straight[e] === 1) return 0
  const { x, y } = pack
  const a = edges.from[e]!
  const b = edges.to[e]!
  const cx = pack.centreX[s]!
  const cy = pack.centreY[s]!
  const ux = x[a]! - cx
  const uy = y[a]! - cy
  const vx = x[b]! - cx
  const vy = y[b]! - cy
  const t = pack.turn[s]!
  let turn = Math.atan2(t * (ux * vy - uy * vx), ux * vx + uy * vy)
  if (turn < 0) turn += 2 * Math.PI
  return (t * turn) / 2
}

/** Directions nearer than this are compared at the end of the shorter edge. */
const nearlyParallel = 1e-3

function sortRound(
  pack: Pack,
  edges: Edges,
  spoke: Int32Array,
  begin: number,
  end: number,
  snap: number,
): void {
  const count = end - begin
  const { x, y } = pack
  const direction = new Float64Array(count)
  const half = new Float64Array(count)
  const length = new Float64Array(count)
  const hs = new Int32Array(count)
  const far = new Int32Array(count)
  for (let k = 0; k < count; k++) {
    const h = spoke[begin + k]!
    const e = h >> 1
    const a = edges.from[e]!
    const b = edges.to[e]!
    const dx = h & 1 ? x[a]! - x[b]! : x[b]! - x[a]!
    const dy = h & 1 ? y[a]! - y[b]! : y[b]! - y[a]!
    const turn = halfTurn(pack, edges, e)
    hs[k] = h
    far[k] = h & 1 ? a : b
    half[k] = h & 1 ? -turn : turn
    length[k] = Math.sqrt(dx * dx + dy * dy)
    direction[k] = wrapped(Math.atan2(dy, dx) - half[k]!)
  }
  const order = new Int32Array(count)
  for (let k = 0; k < count; k++) order[k] = k
  insertionSort(order, (p, q) => direction[p]! - direction[q]! || hs[p]! - hs[q]!)

  // begin after the widest gap, so that no bundle of nearly parallel edges is cut in two
  let widest = -1
  let from = 0
  for (let k = 0; k < count; k++) {
    const gap =
      k === 0
        ? direction[order[0]!]! + 2 * Math.PI - direction[order[count - 1]!]!
        : direction[order[k]!]! - direction[order[k - 1]!]!
    if (gap > widest) {
      widest = gap
      from = k
    }
  }
  const turned = new Int32Array(count)
  for (let k = 0; k < count; k++) turned[k] = order[(from + k) % count]!
  for (let k = 0; k < from; k++) direction[order[k]!]! += 2 * Math.PI

  const comesAfter = (p: number, q: number): number => {
    const apart = direction[p]! - direction[q]!
    const reach = Math.min(length[p]!, length[q]!)
    if (Math.abs(apart) > nearlyParallel + (8 * snap) / reach) return apart
    // two edges between the same vertices meet again there: the one that bulges more to the right comes first
    if (far[p] === far[q]) return half[q]! - half[p]! || hs[p]! - hs[q]!
    if (half[p] === 0 && half[q] === 0) {
      const side = exactTurn(pack, edges, hs[q]!, hs[p]!)
      if (side !== 0) return side
    }
    const asideAt = (distance: number): number =>
      distance * (apart + bend(half[p]!, length[p]!, distance) - bend(half[q]!, length[q]!, distance))
    const there = asideAt(reach)
    const halfway = asideAt(reach / 2)
    return (Math.abs(halfway) > Math.abs(there) ? halfway : there) || hs[p]! - hs[q]!
  }
  insertionSort(turned, comesAfter)
  for (let k = 0; k < count; k++) spoke[begin + k] = hs[turned[k]!]!
}

/** By how much the direction to an edge's point at a distance from its vertex differs from that at the vertex. */
function bend(half: number, length: number, reach: number): number {
  if (half === 0) return 0
  if (reach >= length) return half
  return Math.asin(Math.max(-1, Math.min(1, (Math.sin(half) * reach) / length)))
}

/** Positive where half-edge g leaves their common vertex to the left of h; both straight; exact. */
function exactTurn(pack: Pack, edges: Edges, h: number, g: number): number {
  const { x, y } = pack
  const at = (v: number) => ({ x: x[v]!, y: y[v]! })
  const origin = h & 1 ? edges.to[h >> 1]! : edges.from[h >> 1]!
  const endOf = (k: number) => (k & 1 ? edges.from[k >> 1]! : edges.to[k >> 1]!)
  return orientation(at(origin), at(endOf(h)), at(endOf(g)))
}

function insertionSort(order: Int32Array, compare: (p: number, q: number) => number): void {
  for (let k = 1; k < order.length; k++) {
    const p = order[k]!
    let m = k - 1
    while (m >= 0 && compare(order[m]!, p) > 0) {
      order[m + 1] = order[m]!
      m--
    }
    order[m + 1] = p
  }
}

function wrapped(angle: number): number {
  if (angle > Math.PI) return angle - 2 * Math.PI
  if (angle <= -Math.PI) return angle + 2 * Math.PI
  return angle
}
