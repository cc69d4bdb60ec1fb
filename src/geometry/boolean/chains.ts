import { int32Array } from './memory.ts'
import type { Pack } from './pack.ts'
import type { Edges } from './split.ts'

/**
 * Edges that follow each other where nothing else ends, taken together: most edges of an arrangement, and nothing
 * between the two ends of a chain can change what lies on its sides. Chain c is the edges from `start[c]` up to
 * `start[c + 1]`, all in its direction, and `of[e]` the chain that edge e is in. Half-chain 2c runs along chain c,
 * 2c + 1 back along it.
 */
export type Chains = { count: number; readonly start: Int32Array; readonly of: Int32Array }

export function chainEdges(pack: Pack, edges: Edges): Chains {
  const { memory } = pack
  const { count: m, from, to, segment } = edges
  const degree = int32Array(memory, pack.vertexCount)
  for (let e = 0; e < m; e++) {
    degree[from[e]!]!++
    degree[to[e]!]!++
  }
  const chains: Chains = { count: 0, start: int32Array(memory, m + 1), of: int32Array(memory, m) }
  const { start, of } = chains
  for (let e = 0; e < m; e++) {
    const before = e - 1
    const goesOn =
      e > 0 &&
      to[before] === from[e] &&
      degree[from[e]!] === 2 &&
      // there and back: the two may coincide
      from[before] !== to[e] &&
      pack.first[segment[before]!] === pack.first[segment[e]!] &&
      pack.second[segment[before]!] === pack.second[segment[e]!]
    if (!goesOn) start[chains.count++] = e
    of[e] = chains.count - 1
  }
  start[chains.count] = m
  return chains
}

/** The half-edge that a half-chain begins with. */
export function firstOf({ start }: Chains, h: number): number {
  const c = h >> 1
  return h & 1 ? 2 * start[c + 1]! - 1 : 2 * start[c]!
}

/** The half-chain that a half-edge is in. */
export function halfChainOf({ of }: Chains, h: number): number {
  return 2 * of[h >> 1]! + (h & 1)
}
