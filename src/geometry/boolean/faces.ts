import { coincident } from '../../number/tolerance.ts'
import { type BoxTree, visitLevel } from './box-tree.ts'
import type { Graph } from './graph.ts'
import { grown, type Pack } from './pack.ts'
import type { Edges } from './split.ts'

/**
 * The faces of the arrangement. A face is bounded by one or more rings of half-edges; `ring` names the ring of
 * a half-edge (−1 for one that is gone), `first` and `second` are the winding numbers in a ring's face.
 * `sameFace` lists pairs of rings of different parts of the arrangement that bound one face.
 */
export type Faces = {
  readonly ring: Int32Array
  readonly ringCount: number
  readonly first: Int32Array
  readonly second: Int32Array
  readonly sameFace: readonly (readonly [number, number])[]
}

/** Where the windings contradict each other: the number of a half-edge or of a part of the arrangement. */
export type Contradiction = { readonly reason: string; readonly x: number; readonly y: number }

/**
 * Finds the rings, and every face's winding numbers.
 *
 * Across an edge the winding numbers change by what the edge carries, so within a connected part one face gives
 * all the others, and every edge is checked. A level line through each part's tallest edge says in which face of
 * the rest it lies: between two hits one after the other on that line there is one face, and left of the last
 * there is none. Every one of these equations is checked too, so an arrangement that is not a map of the
 * plane is found out.
 */
export function findFaces(pack: Pack, edges: Edges, graph: Graph, tree: BoxTree): Faces | Contradiction {
  const { ring, ringStart } = traceRings(graph)
  const ringCount = ringStart.length
  const first = new Int32Array(ringCount)
  const second = new Int32Array(ringCount)
  const part = new Int32Array(ringCount).fill(-1)
  const tallest: number[] = []
  const { next } = graph

  const whereIs = (e: number): { x: number; y: number } => ({
    x: pack.x[edges.from[e]!]!,
    y: pack.y[edges.from[e]!]!,
  })

  const waiting: number[] = []
  for (let root = 0; root < ringCount; root++) {
    if (part[root] !== -1) continue
    const p = tallest.length
    let height = -1
    let tall = -1
    part[root] = p
    waiting.push(root)
    while (waiting.length > 0) {
      const r = waiting.pop()!
      const begin = ringStart[r]!
      let h = begin
      do {
        const e = h >> 1
        const sign = h & 1 ? -1 : 1
        const over = ring[h ^ 1]!
        const w1 = first[r]! - sign * graph.first[e]!
        const w2 = second[r]! - sign * graph.second[e]!
        if (part[over] === -1) {
          part[over] = p
          first[over] = w1
          second[over] = w2
          waiting.push(over)
        } else if (first[over] !== w1 || second[over] !== w2) {
          return { reason: 'the windings round a vertex do not agree', ...whereIs(e) }
        }
        if ((h & 1) === 0) {
          const tallness = edgeHeight(pack, edges, e)
          if (tallness > height) {
            height = tallness
            tall = e
          }
        }
        h = next[h]!
      } while (h !== begin)
    }
    tallest.push(tall)
  }

  // equations between rings of different parts
  const sameFace: [number, number][] = []
  const outside: number[] = []
  for (let p = 0; p < tallest.length; p++) {
    const hits = castThrough(pack, edges, graph, tree, tallest[p]!)
    let k = 0
    while (k < hits.count && part[ring[2 * hits.edge[k]!]!] !== p) k++
    const west = (at: number) => ring[2 * hits.edge[at]! + (hits.up[at] === 1 ? 0 : 1)]!
    const east = (at: number) => ring[2 * hits.edge[at]! + (hits.up[at] === 1 ? 1 : 0)]!
    let own = -1
    for (let at = hits.count - 1; at > k; at--) {
      const to = west(at)
      const from = east(at - 1)
      if (part[to] !== part[from]) continue
      if (first[to] !== first[from] || second[to] !== second[from]) own = at
    }
    if (k === hits.count || own !== -1) {
      return { reason: 'the windings along a level line do not agree', ...whereIs(tallest[p]!) }
    }
    if (k === 0) outside.push(west(0))
    else sameFace.push([east(k - 1), west(k)])
  }
  if (!settleParts(part, tallest.length, first, second, sameFace, outside)) {
    const at = tallest[0] ?? 0
    return { reason: 'the windings of the parts do not agree', ...whereIs(at) }
  }
  return { ring, ringCount, first, second, sameFace }
}

function traceRings({ next }: Graph): { ring: Int32Array; ringStart: number[] } {
  const ring = new Int32Array(next.length).fill(-1)
  const ringStart: number[] = []
  for (let h = 0; h < next.length; h++) {
    if (next[h] === -1 || ring[h] !== -1) continue
    const r = ringStart.length
    ringStart.push(h)
    for (let g = h; ring[g] === -1; g = next[g]!) ring[g] = r
  }
  return { ring, ringStart }
}

/**
 * Shifts the winding numbers of every part so that they are 0 far away and equal where two parts share a face.
 *
 * @returns false where that cannot be done
 */
function settleParts(
  part: Int32Array,
  parts: number,
  first: Int32Array,
  second: Int32Array,
  sameFace: readonly (readonly [number, number])[],
  outside: readonly number[],
): boolean {
  const shift1 = new Int32Array(parts)
  const shift2 = new Int32Array(parts)
  const settled = new Uint8Array(parts)
  const links: number[][] = Array.from({ length: parts }, () => [])
  sameFace.forEach(([a, b], k) => {
    links[part[a]!]!.push(k)
    links[part[b]!]!.push(k)
  })
  const waiting: number[] = []
  const settle = (r: number, w1: number, w2: number): boolean => {
    const p = part[r]!
    if (settled[p] === 1) return first[r]! + shift1[p]! === w1 && second[r]! + shift2[p]! === w2
    settled[p] = 1
    shift1[p] = w1 - first[r]!
    shift2[p] = w2 - second[r]!
    waiting.push(p)
    return true
  }
  for (const r of outside) if (!settle(r, 0, 0)) return false
  while (waiting.length > 0) {
    const p = waiting.pop()!
    for (const k of links[p]!) {
      const [a, b] = sameFace[k]!
      const [here, there] = part[a] === p ? [a, b] : [b, a]
      if (!settle(there, first[here]! + shift1[p]!, second[here]! + shift2[p]!)) return false
    }
  }
  for (let r = 0; r < part.length; r++) {
    const p = part[r]!
    if (settled[p] === 0) return false
    first[r]! += shift1[p]!
    second[r]! += shift2[p]!
  }
  return true
}

/** Edges met by a level line, from left to right; `up` 1 where the edge rises there. */
type Hits = { count: number; x: Float64Array; edge: Int32Array; up: Uint8Array }

/** Fractions of an edge's height at which its level line is tried until its hits are clearly apart. */
const fractions = [0.5, 0.38, 0.63, 0.27, 0.74, 0.44, 0.57, 0.31, 0.69, 0.17, 0.83]

/** The edges that the level line through an edge meets, from left to right. */
function castThrough(pack: Pack, edges: Edges, graph: Graph, tree: BoxTree, e: number): Hits {
  const [low, high] = heightOf(pack, edges, e)
  let best: Hits | undefined
  let bestGap = -1
  for (const fraction of fractions) {
    const hits = levelHits(pack, edges, graph, tree, low + fraction * (high - low))
    let gap = Infinity
    for (let k = 1; k < hits.count; k++) gap = Math.min(gap, hits.x[k]! - hits.x[k - 1]!)
    if (gap > bestGap) {
      best = hits
      bestGap = gap
    }
    if (bestGap > coincident) break
  }
  return best!
}

function levelHits(pack: Pack, edges: Edges, graph: Graph, tree: BoxTree, level: number): Hits {
  const hits: Hits = { count: 0, x: new Float64Array(16), edge: new Int32Array(16), up: new Uint8Array(16) }
  const seen = new Set<number>()
  const visit = (segment: number): void => {
    for (let k = edges.pieceStart[segment]!; k < edges.pieceStart[segment + 1]!; k++) {
      const live = graph.standsFor[k]!
      if (live === -1 || (live !== k && seen.has(live))) continue
      if (seen.has(live)) continue
      seen.add(live)
      meetLevel(pack, edges, live, level, (x, up) => addHit(hits, x, live, up))
    }
  }
  visitLevel(tree, level, visit)
  sortHits(hits)
  return hits
}

function addHit(hits: Hits, x: number, edge: number, up: boolean): void {
  const k = hits.count++
  if (k === hits.x.length) {
    hits.x = grown(hits.x, 2 * k)
    hits.edge = grown(hits.edge, 2 * k)
    const longer = new Uint8Array(2 * k)
    longer.set(hits.up)
    hits.up = longer
  }
  hits.x[k] = x
  hits.edge[k] = edge
  hits.up[k] = up ? 1 : 0
}

function sortHits(hits: Hits): void {
  const order = Array.from({ length: hits.count }, (_, k) => k).sort(
    (p, q) => hits.x[p]! - hits.x[q]! || p - q,
  )
  const x = new Float64Array(hits.count)
  const edge = new Int32Array(hits.count)
  const up = new Uint8Array(hits.count)
  order.forEach((from, to) => {
    x[to] = hits.x[from]!
    edge[to] = hits.edge[from]!
    up[to] = hits.up[from]!
  })
  hits.x = x
  hits.edge = edge
  hits.up = up
}

/**
 * Where an edge meets a level line. An end on the line counts as above it, so a chain of edges is met the right
 * number of times even through its vertices.
 */
function meetLevel(
  pack: Pack,
  edges: Edges,
  e: number,
  level: number,
  hit: (x: number, up: boolean) => void,
): void {
  const s = edges.segment[e]!
  const { x, y } = pack
  const ax = x[edges.from[e]!]!
  const ay = y[edges.from[e]!]!
  const bx = x[edges.to[e]!]!
  const by = y[edges.to[e]!]!
  const startsBelow = ay < level
  const endsBelow = by < level
  if (edges.straight[e] === 1) {
    if (startsBelow !== endsBelow) hit(ax + ((level - ay) / (by - ay)) * (bx - ax), startsBelow)
    return
  }
  const r = pack.radius[s]!
  const cx = pack.centreX[s]!
  const cy = pack.centreY[s]!
  const turn = pack.turn[s]!
  const reachesTop = turn * (ax - cx) > 0 && turn * (bx - cx) < 0
  const reachesBottom = turn * (ax - cx) < 0 && turn * (bx - cx) > 0
  const aboveTop = cy + r < level
  const aboveBottom = cy - r < level
  const half = Math.sqrt(Math.max(0, (r - (level - cy)) * (r + (level - cy))))
  // a counter-clockwise arc rises on the right half of its circle and falls on the left half
  const right = (up: boolean) => hit(cx + half, up)
  const left = (up: boolean) => hit(cx - half, up)
  if (startsBelow === endsBelow) {
    if (reachesTop && startsBelow && !aboveTop) {
      right(turn > 0)
      left(turn < 0)
    } else if (reachesBottom && !startsBelow && aboveBottom) {
      left(turn < 0)
      right(turn > 0)
    }
    return
  }
  if (startsBelow === turn > 0) right(startsBelow)
  else left(startsBelow)
}

function edgeHeight(pack: Pack, edges: Edges, e: number): number {
  const { y } = pack
  const chord = Math.abs(y[edges.to[e]!]! - y[edges.from[e]!]!)
  if (edges.straight[e] === 1) return chord
  const [low, high] = heightOf(pack, edges, e)
  return high - low
}

/** The lowest and the highest y of an edge. */
function heightOf(pack: Pack, edges: Edges, e: number): [number, number] {
  const { x, y } = pack
  const ax = x[edges.from[e]!]!
  const ay = y[edges.from[e]!]!
  const bx = x[edges.to[e]!]!
  const by = y[edges.to[e]!]!
  let low = Math.min(ay, by)
  let high = Math.max(ay, by)
  if (edges.straight[e] === 0) {
    const s = edges.segment[e]!
    const r = pack.radius[s]!
    const cx = pack.centreX[s]!
    const cy = pack.centreY[s]!
    const turn = pack.turn[s]!
    if (turn * (ax - cx) > 0 && turn * (bx - cx) < 0) high = Math.max(high, cy + r)
    if (turn * (ax - cx) < 0 && turn * (bx - cx) > 0) low = Math.min(low, cy - r)
  }
  return [low, high]
}
