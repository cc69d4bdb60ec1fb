import { orientation } from '../../number/predicates.ts'
import { halfTurn } from './edge-turn.ts'
import type { Pack } from './pack.ts'
import { type Edges, originOf } from './split.ts'

/** Directions nearer than this, in radians, are compared where the edges are farther apart. */
const nearlyParallel = 1e-3

/** Above this number the built-in sort is quicker than insertion. */
const few = 24

/**
 * Makes a function that sorts the half-edges leaving one vertex, `spoke` from `begin` up to `end`,
 * counter-clockwise.
 *
 * The order is by direction. Edges that leave in nearly the same direction are compared where they are farther
 * apart, at the end of the shorter one or halfway there, with an exact sign if both are straight: since edges do
 * not cross, whoever is on the left there is on the left at the vertex.
 */
export function createSpokeSorter(
  pack: Pack,
  edges: Edges,
  spoke: Int32Array,
  snap: number,
): (begin: number, end: number) => void {
  const { x, y } = pack
  // by place in the bundle, filled anew for every vertex
  const direction: number[] = []
  const half: number[] = []
  const length: number[] = []
  const far: number[] = []
  const halfEdge: number[] = []
  const order: number[] = []

  const byDirection = (p: number, q: number): number =>
    direction[p]! - direction[q]! || halfEdge[p]! - halfEdge[q]!

  const comesAfter = (p: number, q: number): number => {
    const apart = direction[p]! - direction[q]!
    const reach = Math.min(length[p]!, length[q]!)
    if (Math.abs(apart) > nearlyParallel + (8 * snap) / reach) return apart
    const tie = halfEdge[p]! - halfEdge[q]!
    // two edges between the same vertices meet again there: the one that bulges more to the right comes first
    if (far[p] === far[q]) return half[q]! - half[p]! || tie
    if (half[p] === 0 && half[q] === 0) {
      const side = exactTurn(halfEdge[q]!, far[q]!, far[p]!)
      if (side !== 0) return side
    }
    const there = aside(p, q, apart, reach)
    const halfway = aside(p, q, apart, reach / 2)
    return (Math.abs(halfway) > Math.abs(there) ? halfway : there) || tie
  }

  /** How far left of edge q edge p is, at a distance from their vertex. */
  const aside = (p: number, q: number, apart: number, distance: number): number =>
    distance * (apart + bend(half[p]!, length[p]!, distance) - bend(half[q]!, length[q]!, distance))

  const exactTurn = (h: number, b: number, c: number): number => {
    const origin = originOf(edges, h)
    const at = (v: number) => ({ x: x[v]!, y: y[v]! })
    return orientation(at(origin), at(b), at(c))
  }

  const insert = (count: number, compare: (p: number, q: number) => number): void => {
    for (let k = 1; k < count; k++) {
      const p = order[k]!
      let m = k - 1
      while (m >= 0 && compare(order[m]!, p) > 0) {
        order[m + 1] = order[m]!
        m--
      }
      order[m + 1] = p
    }
  }

  /**
   * Sorts by a measure of direction that is quick to get and grows as the angle does, and says whether no two
   * were near each other.
   */
  const sortQuickly = (begin: number, count: number): boolean => {
    let shortest = Infinity
    for (let k = 0; k < count; k++) {
      const h = spoke[begin + k]!
      const e = h >> 1
      const back = (h & 1) === 1
      const a = back ? edges.to[e]! : edges.from[e]!
      const b = back ? edges.from[e]! : edges.to[e]!
      let dx = x[b]! - x[a]!
      let dy = y[b]! - y[a]!
      const across = Math.abs(dx) + Math.abs(dy)
      if (across < shortest) shortest = across
      if (edges.straight[e] === 0) {
        const s = edges.segment[e]!
        const t = back ? -pack.turn[s]! : pack.turn[s]!
        dx = -t * (y[a]! - pack.centreY[s]!)
        dy = t * (x[a]! - pack.centreX[s]!)
      }
      // 0 to 4 once round
      const share = dy / (Math.abs(dx) + Math.abs(dy))
      direction[k] = dx < 0 ? 2 - share : dy < 0 ? 4 + share : share
      halfEdge[k] = h
      order[k] = k
    }
    insert(count, byDirection)
    // twice as much as two directions can be out by snapping and by the measure's own stretching
    const near = 8 * nearlyParallel + (16 * snap) / shortest
    let before = direction[order[count - 1]!]! - 4
    for (let k = 0; k < count; k++) {
      const here = direction[order[k]!]!
      if (here - before < near) return false
      before = here
    }
    for (let k = 0; k < count; k++) spoke[begin + k] = halfEdge[order[k]!]!
    return true
  }

  return (begin, end) => {
    const count = end - begin
    if (count <= few && sortQuickly(begin, count)) return
    for (let k = 0; k < count; k++) {
      const h = spoke[begin + k]!
      const e = h >> 1
      const back = (h & 1) === 1
      const a = back ? edges.to[e]! : edges.from[e]!
      const b = back ? edges.from[e]! : edges.to[e]!
      const dx = x[b]! - x[a]!
      const dy = y[b]! - y[a]!
      const turn = halfTurn(pack, edges, e)
      halfEdge[k] = h
      far[k] = b
      half[k] = back ? -turn : turn
      length[k] = Math.sqrt(dx * dx + dy * dy)
      direction[k] = wrapped(Math.atan2(dy, dx) - half[k]!)
      order[k] = k
    }
    if (count > few) {
      order.length = count
      order.sort(byDirection)
    } else insert(count, byDirection)

    // begin after the widest gap, so that no bundle of nearly parallel edges is cut in two
    let widest = direction[order[0]!]! + 2 * Math.PI - direction[order[count - 1]!]!
    let first = 0
    for (let k = 1; k < count; k++) {
      const gap = direction[order[k]!]! - direction[order[k - 1]!]!
      if (gap > widest) {
        widest = gap
        first = k
      }
    }
    for (let k = 0; k < first; k++) direction[order[k]!]! += 2 * Math.PI
    if (first > 0) rotate(order, count, first)
    insert(count, comesAfter)
    for (let k = 0; k < count; k++) spoke[begin + k] = halfEdge[order[k]!]!
  }
}

/** Turns the beginning of a list so that the member at `first` comes first. */
function rotate(list: number[], count: number, first: number): void {
  const turned = list.slice(first, count).concat(list.slice(0, first))
  for (let k = 0; k < count; k++) list[k] = turned[k]!
}

/** By how much the direction to an edge's point at a distance from its vertex differs from that at the vertex. */
function bend(half: number, length: number, distance: number): number {
  if (half === 0) return 0
  if (distance >= length) return half
  return Math.asin(Math.max(-1, Math.min(1, (Math.sin(half) * distance) / length)))
}

function wrapped(angle: number): number {
  if (angle > Math.PI) return angle - 2 * Math.PI
  if (angle <= -Math.PI) return angle + 2 * Math.PI
  return angle
}
