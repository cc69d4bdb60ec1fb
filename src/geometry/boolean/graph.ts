import { type Chains, chainEdges, firstOf, halfChainOf } from './chains.ts'
import { bulge } from './edge-turn.ts'
import { endsOf, int32Array } from './memory.ts'
import type { Pack } from './pack.ts'
import { createSpokeSorter } from './sort-spokes.ts'
import { type Edges, originOf } from './split.ts'

/**
 * The arrangement as a graph of chains of edges. `next` leads round the face on the left of a half-chain. A chain
 * of one edge that coincides with another is merged into it, and one that changes no winding number is left out; the
 * `next` of their halves is −1.
 */
export type Graph = {
  readonly chains: Chains
  readonly next: Int32Array
  /** By how much the winding numbers are larger on the left of a chain. */
  readonly first: Int32Array
  readonly second: Int32Array
  /** The chain that stands for a chain: itself, the one it was merged into, or −1 where nothing is left. */
  readonly standsFor: Int32Array
}

/** Merges coinciding edges, sorts the others round every vertex (two need no sorting) and links their chains. */
export function buildGraph(pack: Pack, edges: Edges, snap: number): Graph {
  const chains = chainEdges(pack, edges)
  const n = chains.count
  const first = int32Array(pack.memory, n)
  const second = int32Array(pack.memory, n)
  const standsFor = int32Array(pack.memory, n)
  const next = int32Array(pack.memory, 2 * n)
  for (let c = 0; c < n; c++) {
    const s = edges.segment[chains.start[c]!]!
    first[c] = pack.first[s]!
    second[c] = pack.second[s]!
    standsFor[c] = c
  }
  const graph: Graph = { chains, next, first, second, standsFor }
  let spokes = gatherSpokes(pack, edges, graph)
  if (mergeEdges(pack, edges, graph, spokes, snap)) spokes = gatherSpokes(pack, edges, graph)

  next.fill(-1)
  const { start, spoke } = spokes
  const sortSpokes = createSpokeSorter(pack, edges, spoke, snap)
  for (let v = 0; v < pack.vertexCount; v++) {
    const begin = start[v]!
    const end = start[v + 1]!
    if (end - begin > 2) sortSpokes(begin, end)
    for (let k = begin; k < end; k++) {
      next[halfChainOf(chains, spoke[k]!) ^ 1] = halfChainOf(chains, spoke[k === begin ? end - 1 : k - 1]!)
    }
  }
  return graph
}

/** The half-edges with which chains leave each vertex: those of v stand from start[v] up to start[v + 1]. */
type Spokes = { readonly start: Int32Array; readonly spoke: Int32Array }

function gatherSpokes(pack: Pack, edges: Edges, { chains, standsFor }: Graph): Spokes {
  const n = pack.vertexCount
  const { from, to } = edges
  const start = int32Array(pack.memory, n + 1)
  const spoke = int32Array(pack.memory, 2 * chains.count)
  for (let c = 0; c < chains.count; c++) {
    if (standsFor[c] !== c) continue
    start[from[chains.start[c]!]!]!++
    start[to[chains.start[c + 1]! - 1]!]!++
  }
  endsOf(start)
  for (let c = chains.count - 1; c >= 0; c--) {
    if (standsFor[c] !== c) continue
    spoke[--start[to[chains.start[c + 1]! - 1]!]!] = firstOf(chains, 2 * c + 1)
    spoke[--start[from[chains.start[c]!]!]!] = firstOf(chains, 2 * c)
  }
  return { start, spoke }
}

/**
 * Merges edges between the same two vertices that nowhere part by more than `snap`: their windings add
 * up, and where these cancel the edge is gone. An edge of a longer chain has a vertex of its own at one end or the
 * other and meets no other edge at both.
 */
function mergeEdges(
  pack: Pack,
  edges: Edges,
  { chains, first, second, standsFor }: Graph,
  { start, spoke }: Spokes,
  snap: number,
): boolean {
  let any = false
  for (let v = 0; v < pack.vertexCount; v++) {
    const begin = start[v]!
    const end = start[v + 1]!
    if (end - begin < 2) continue
    if (end - begin > 8) {
      // with the other ends in order, only neighbours can coincide
      const far = (h: number) => originOf(edges, h ^ 1)
      spoke.subarray(begin, end).sort((g, h) => far(g) - far(h) || g - h)
    }
    for (let k = begin; k < end; k++) {
      const h = spoke[k]!
      const c = chains.of[h >> 1]!
      const w = originOf(edges, h ^ 1)
      if (w < v || standsFor[c] !== c) continue
      for (let l = k + 1; l < end; l++) {
        const g = spoke[l]!
        const d = chains.of[g >> 1]!
        if (originOf(edges, g ^ 1) !== w) {
          if (end - begin > 8) break
          continue
        }
        if (standsFor[d] !== d) continue
        if (Math.abs(bulge(pack, edges, h) - bulge(pack, edges, g)) > snap) continue
        const sign = (h & 1) === (g & 1) ? 1 : -1
        // the lower number stands for both, so a shared edge keeps the name of the first operand's
        const keep = Math.min(c, d)
        const gone = Math.max(c, d)
        first[keep]! += sign * first[gone]!
        second[keep]! += sign * second[gone]!
        standsFor[gone] = keep
        any = true
        if (keep !== c) break
      }
    }
  }
  if (!any) return false
  for (let c = 0; c < chains.count; c++) {
    let d = c
    while (standsFor[d]! !== d) d = standsFor[d]!
    standsFor[c] = d
  }
  for (let c = 0; c < chains.count; c++) {
    const d = standsFor[c]!
    if (first[d] === 0 && second[d] === 0) standsFor[c] = -1
  }
  return true
}
