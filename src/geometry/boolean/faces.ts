import { coincident } from '../../number/tolerance.ts'
import { type BoxTree, visitLevel } from './box-tree.ts'
import type { Graph } from './graph.ts'
import type { Pack } from './pack.ts'
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

  const differ = (r: number, q: number) => first[r] !== first[q] || second[r] !== second[q]
  // equations between rings of different parts
  const sameFace: [number, number][] = []
  const outside: number[] = []
  for (let p = 0; p < tallest.length; p++) {
    const hits = castThrough(pack, edges, graph, tree, tallest[p]!)
    let k = 0
    while (k < hits.count && part[ring[2 * hits.edge[k]!]!] !== p) k++
    const west = (at: number) => ring[2 * hits.edge[at]! + (hits.up[at] === 1 ? 0 : 1)]!
    const east = (at: number) => ring[2 * hits.edge[at]! + (hits.up[at] === 1 ? 1 : 0)]!
    if (
      k === hits.count ||
      !agrees(hits, at => part[west(at)] === part[east(at - 1)] && differ(west(at), east(at - 1)))
    ) {
      return { reason: 'the windings along a level line do not agree', ...whereIs(tallest[p]!) }
    }
    const partOf = (at: number) => part[ring[2 * hits.edge[at]!]!]!
    const here = bundle(hits, k, 1, partOf)
    const leftmost = endOfBundle(here, west, east) ?? west(k)
    if (k === 0) outside.push(leftmost)
    else {
      const before = bundle(hits, k - 1, -1, partOf)
      sameFace.push([endOfBundle(before, east, west) ?? east(k - 1), leftmost])
    }
  }
  if (!settleParts(part, tallest.length, first, second, sameFace, outside)) {
    const at = tallest[0] ?? 0
    return { reason: 'the windings of the parts do not agree', ...whereIs(at) }
  }
  return { ring, ringCount, first, second, sameFace }
}

/** Whether no pair of hits whose order is beyond doubt is in conflict. */
function agrees(hits: Hits, conflict: (at: number) => boolean): boolean {
  const clear = (at: number) => at < 1 || at >= hits.count || clearance(hits, at) > doubt
  for (let at = 1; at < hits.count; at++) {
    if (clear(at - 1) && clear(at) && clear(at + 1) && conflict(at)) return false
  }
  return true
}

/** The hits of one part, from hit k on to the right (1) or left (−1), whose order is in doubt. */
function bundle(hits: Hits, k: number, step: 1 | -1, partOf: (at: number) => number): number[] {
  const members = [k]
  for (let at = k + step; at >= 0 && at < hits.count; at += step) {
    if (clearance(hits, step === 1 ? at : at + 1) > doubt) break
    if (partOf(at) === partOf(k)) members.push(at)
  }
  return members
}

/**
 * The face at the end of a bundle without regard to the order of its edges: each face within the bundle lies
 * before one edge and behind another, only that at the end has an edge on one side more often.
 */
function endOfBundle(
  members: readonly number[],
  toward: (at: number) => number,
  away: (at: number) => number,
): number | undefined {
  if (members.length === 1) return toward(members[0]!)
  const balance = new Map<number, number>()
  for (const at of members) {
    balance.set(toward(at), (balance.get(toward(at)) ?? 0) + 1)
    balance.set(away(at), (balance.get(away(at)) ?? 0) - 1)
  }
  for (const [r, count] of balance) if (count > 0) return r
  return undefined
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

/**
 * Edges met by a level line, from left to right; `up` 1 where the edge rises there, `steep` the sine of the
 * angle between the two.
 */
type Hits = { count: number; x: Float64Array; steep: Float64Array; edge: Int32Array; up: Uint8Array }

/**
 * Edges nearer than this where a level line meets them may come in either order: each was snapped by up to
 * `coincident`, at either end.
 */
const doubt = 4 * coincident

/** How far hit k is from the hit before it, across the flatter of the two edges. */
function clearance(hits: Hits, k: number): number {
  return (hits.x[k]! - hits.x[k - 1]!) * Math.min(hits.steep[k]!, hits.steep[k - 1]!)
}

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
    for (let k = 1; k < hits.count; k++) gap = Math.min(gap, clearance(hits, k))
    if (gap > bestGap) {
      best = hits
      bestGap = gap
    }
    if (bestGap > doubt) break
  }
  return best!
}

function levelHits(pack: Pack, edges: Edges, graph: Graph, tree: BoxTree, level: number): Hits {
  const found: { x: number; steep: number; edge: number; up: boolean }[] = []
  const seen = new Set<number>()
  visitLevel(tree, level, segment => {
    for (let k = edges.pieceStart[segment]!; k < edges.pieceStart[segment + 1]!; k++) {
      const edge = graph.standsFor[k]!
      if (edge === -1 || seen.has(edge)) continue
      seen.add(edge)
      meetLevel(pack, edges, edge, level, (x, up, steep) => found.push({ x, steep, edge, up }))
    }
  })
  found.sort((p, q) => p.x - q.x || p.edge - q.edge)
  return {
    count: found.length,
    x: Float64Array.from(found, h => h.x),
    steep: Float64Array.from(found, h => h.steep),
    edge: Int32Array.from(found, h => h.edge),
    up: Uint8Array.from(found, h => (h.up ? 1 : 0)),
  }
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
  hit: (x: number, up: boolean, steep: number) => void,
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
    if (startsBelow === endsBelow) return
    const steep = Math.abs(by - ay) / Math.hypot(bx - ax, by - ay)
    hit(ax + ((level - ay) / (by - ay)) * (bx - ax), startsBelow, steep)
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
  const right = (up: boolean) => hit(cx + half, up, half / r)
  const left = (up: boolean) => hit(cx - half, up, half / r)
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
