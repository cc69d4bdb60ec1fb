import type { BoxTree } from './box-tree.ts'
import type { Graph } from './graph.ts'
import { castThrough, edgeHeight, mostHeight } from './level-line.ts'
import { linkParts } from './link-parts.ts'
import { int32Array, type Memory } from './memory.ts'
import type { Pack } from './pack.ts'
import { agrees, type Links, type Rings, settleParts } from './parts.ts'
import type { Edges } from './split.ts'

/**
 * The faces of the arrangement. A face is bounded by one or more rings of half-chains; `ring` names the ring of
 * a half-chain (−1 for one that is gone), `first` and `second` are the winding numbers in a ring's face.
 * `sameFace` lists pairs of rings of different parts of the arrangement that bound one face; `ringCount` stands
 * in it for what lies far away.
 */
export type Faces = {
  readonly ring: Int32Array
  readonly ringCount: number
  readonly first: Int32Array
  readonly second: Int32Array
  readonly sameFace: readonly (readonly [number, number])[]
}

/** That windings contradict each other, and about where, in mm. */
export type Contradiction = { readonly reason: string; readonly x: number; readonly y: number }

/**
 * Finds the rings, and every face's winding numbers.
 *
 * Across an edge the winding numbers change by what the edge carries, so within a connected part one face gives
 * all the others, and every chain is checked. A level line from each part's tallest edge to its neighbour on the
 * left says in which face of the rest it lies: between two hits one after the other on that line there is one
 * face, and left of the last there is none. Every one of these equations is checked too, and others along level
 * lines through everything, so an arrangement that is not a map of the plane is found out.
 */
export function findFaces(pack: Pack, edges: Edges, graph: Graph, tree: BoxTree): Faces | Contradiction {
  const { ring, ringStart } = traceRings(graph, pack.memory)
  const ringCount = ringStart.length
  // one more than there are rings: the last stands for the plane far away
  const first = int32Array(pack.memory, ringCount + 1)
  const second = int32Array(pack.memory, ringCount + 1)
  const part = int32Array(pack.memory, ringCount + 1).fill(-1)
  const tallest: number[] = []
  const { chains, next, first: across1, second: across2 } = graph

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
      const here1 = first[r]!
      const here2 = second[r]!
      const begin = ringStart[r]!
      let h = begin
      do {
        const c = h >> 1
        const sign = h & 1 ? -1 : 1
        const over = ring[h ^ 1]!
        const w1 = here1 - sign * across1[c]!
        const w2 = here2 - sign * across2[c]!
        if (part[over] === -1) {
          part[over] = p
          first[over] = w1
          second[over] = w2
          waiting.push(over)
        } else if (first[over] !== w1 || second[over] !== w2) {
          return { reason: 'the windings round a vertex do not agree', ...whereIs(chains.start[c]!) }
        }
        for (let e = chains.start[c]!; (h & 1) === 0 && e < chains.start[c + 1]!; e++) {
          if (mostHeight(pack, edges, e) <= height) continue
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
  part[ringCount] = tallest.length

  const rings = { ring, part, first, second }
  const sameFace: Links = []
  const linked = linkParts(pack, edges, graph, tree, rings, tallest, sameFace)
  const doubtful =
    'contradicts' in linked
      ? linked.contradicts
      : checkAcross(pack, edges, graph, tree, rings, tallest, linked.seenWhole)
  if (doubtful !== undefined) {
    return { reason: 'the windings along a level line do not agree', ...whereIs(tallest[doubtful]!) }
  }
  if (!settleParts(pack.memory, rings, tallest.length, sameFace)) {
    return { reason: 'the windings of the parts do not agree', ...whereIs(tallest[0]!) }
  }
  return { ring, ringCount, first, second, sameFace }
}

/** The level lines that go through everything, as a check, meet at most so many edges for every edge there is. */
const checksForEach = 4

/**
 * The first part that contradicts itself along a level line through everything, where there is one. One that was seen
 * whole would be looked at along the same line again.
 */
function checkAcross(
  pack: Pack,
  edges: Edges,
  graph: Graph,
  tree: BoxTree,
  rings: Rings,
  through: readonly number[],
  seenWhole: readonly boolean[],
): number | undefined {
  let left = checksForEach * edges.count
  for (let p = 0; p < through.length && left > 0; p++) {
    if (seenWhole[p] === true) continue
    const hits = castThrough(pack, edges, graph, tree, through[p]!)
    if (!agrees(hits, rings, 0)) return p
    left -= hits.length
  }
  return undefined
}

function traceRings({ next }: Graph, memory: Memory): { ring: Int32Array; ringStart: number[] } {
  const ring = int32Array(memory, next.length).fill(-1)
  const ringStart: number[] = []
  for (let h = 0; h < next.length; h++) {
    if (next[h] === -1 || ring[h] !== -1) continue
    const r = ringStart.length
    ringStart.push(h)
    for (let g = h; ring[g] === -1; g = next[g]!) ring[g] = r
  }
  return { ring, ringStart }
}
