import { bulge } from './edge-turn.ts'
import { int32Array } from './memory.ts'
import type { Pack } from './pack.ts'
import { createSpokeSorter } from './sort-spokes.ts'
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

/** Merges coinciding edges, sorts the others round every vertex (two need no sorting) and links them. */
export function buildGraph(pack: Pack, edges: Edges, snap: number): Graph {
  const m = edges.count
  const first = int32Array(pack.memory, m)
  const second = int32Array(pack.memory, m)
  const standsFor = int32Array(pack.memory, m)
  const next = int32Array(pack.memory, 2 * m)
  for (let e = 0; e < m; e++) {
    const s = edges.segment[e]!
    first[e] = pack.first[s]!
    second[e] = pack.second[s]!
    standsFor[e] = e
  }
  let spokes = gatherSpokes(pack, edges, standsFor)
  if (mergeEdges(pack, edges, spokes, first, second, standsFor, snap))
    spokes = gatherSpokes(pack, edges, standsFor)

  next.fill(-1)
  const { start, spoke } = spokes
  const sortSpokes = createSpokeSorter(pack, edges, spoke, snap)
  for (let v = 0; v < pack.vertexCount; v++) {
    const begin = start[v]!
    const end = start[v + 1]!
    if (end - begin > 2) sortSpokes(begin, end)
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
  const start = int32Array(pack.memory, n + 1)
  const fill = int32Array(pack.memory, n)
  const spoke = int32Array(pack.memory, 2 * edges.count)
  for (let e = 0; e < edges.count; e++) {
    if (standsFor[e] !== e) continue
    start[edges.from[e]! + 1]!++
    start[edges.to[e]! + 1]!++
  }
  for (let v = 0; v < n; v++) start[v + 1]! += start[v]!
  fill.set(start.subarray(0, n))
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
