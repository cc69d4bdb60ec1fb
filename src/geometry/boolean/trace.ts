import { signedArea } from '../measure/area.ts'
import type { Region } from '../shape/contour.ts'
import { type Chains, firstOf } from './chains.ts'
import type { Faces } from './faces.ts'
import type { Graph } from './graph.ts'
import { int8Array, int32Array } from './memory.ts'
import type { Pack } from './pack.ts'
import { createPen, type Drawn, type Loop } from './pen.ts'
import { type Edges, originOf } from './split.ts'
import { createGroups, groupOf, join } from './vertices.ts'

/**
 * The regions of the plane whose winding numbers `inside` accepts: outer contours counter-clockwise, holes
 * clockwise, neighbours sharing their points.
 *
 * A contour follows the inside closely and is parted wherever it comes back to a vertex, so every contour is
 * simple: regions that touch in a corner are two, and a hole that touches the outside is a hole.
 */
export function traceRegions(
  pack: Pack,
  edges: Edges,
  graph: Graph,
  faces: Faces,
  inside: (first: number, second: number) => boolean,
): Region[] {
  const filled = int8Array(pack.memory, faces.ringCount + 1)
  for (let r = 0; r <= faces.ringCount; r++) filled[r] = inside(faces.first[r]!, faces.second[r]!) ? 1 : 0

  const { chains, next } = graph
  const { ring } = faces
  const bodies = createGroups(pack.memory, faces.ringCount + 1)
  for (const [a, b] of faces.sameFace) if (filled[a] === 1) join(bodies, a, b)
  const leaving = int8Array(pack.memory, pack.vertexCount)
  const boundary = int8Array(pack.memory, next.length)
  for (let c = 0; c < chains.count; c++) {
    if (next[2 * c] === -1) continue
    const left = ring[2 * c]!
    const right = ring[2 * c + 1]!
    if (filled[left] === filled[right]) {
      if (filled[left] === 1 && left !== right) join(bodies, left, right)
      continue
    }
    const h = filled[left] === 1 ? 2 * c : 2 * c + 1
    boundary[h] = 1
    const v = originOf(edges, firstOf(chains, h))
    leaving[v] = leaving[v] === 0 ? 1 : 2
  }

  const loops: Loop[] = []
  // no edge bounds twice
  const halfEdges = int32Array(pack.memory, edges.count)
  let end = 0
  for (let h = 0; h < next.length; h++) {
    if (boundary[h] !== 1) continue
    const body = groupOf(bodies, ring[h]!)
    const path: number[] = []
    let g = h
    do {
      boundary[g] = 2
      path.push(g)
      g = next[g]!
      // past the chains that do not bound, clockwise through the inside
      while (boundary[g] === 0) g = next[g ^ 1]!
    } while (g !== h)
    for (const loop of partAtVertices(path, edges, chains, leaving)) {
      const begin = end
      end = addEdges(chains, loop, halfEdges, begin)
      loops.push({ body, begin, end })
    }
  }
  return assemble(loops, createPen(pack, edges, leaving, halfEdges))
}

/** Parts a closed walk wherever it comes back to a vertex it has left before. */
function partAtVertices(path: number[], edges: Edges, chains: Chains, leaving: Int8Array): number[][] {
  const origin = (h: number) => originOf(edges, firstOf(chains, h))
  if (!path.some(h => leaving[origin(h)] === 2)) return [path]
  const loops: number[][] = []
  const placeOf = new Map<number, number>()
  const stack: number[] = []
  for (const h of path) {
    const v = origin(h)
    const place = placeOf.get(v)
    if (place !== undefined) {
      const loop = stack.splice(place)
      for (const g of loop) placeOf.delete(origin(g))
      loops.push(loop)
    }
    placeOf.set(v, stack.length)
    stack.push(h)
  }
  loops.push(stack)
  return loops
}

/**
 * Writes the half-edges of half-chains to `list` from `begin` on, one after the other, and gives where they end. The
 * first is the one of the first half-chain with the lowest number, so where a contour begins does not depend on which
 * edges make a chain.
 */
function addEdges({ start }: Chains, path: readonly number[], list: Int32Array, begin: number): number {
  let at = begin
  const add = (h: number, lowest: number) => {
    const end = start[(h >> 1) + 1]!
    if (h & 1) for (let e = end - 1; e >= lowest; e--) list[at++] = 2 * e + 1
    else for (let e = lowest; e < end; e++) list[at++] = 2 * e
  }
  const first = path[0]!
  const lowest = start[first >> 1]!
  if (first & 1) list[at++] = 2 * lowest + 1
  else add(first, lowest)
  for (let k = 1; k < path.length; k++) add(path[k]!, start[path[k]! >> 1]!)
  if (first & 1) add(first, lowest + 1)
  return at
}

function assemble(loops: readonly Loop[], draw: (loop: Loop) => Drawn | undefined): Region[] {
  const bodies = new Map<number, Drawn[]>()
  for (const loop of loops) {
    const drawn = draw(loop)
    if (drawn === undefined) continue
    const { body } = loop
    const list = bodies.get(body)
    if (list === undefined) bodies.set(body, [drawn])
    else list.push(drawn)
  }
  const regions: Region[] = []
  for (const list of bodies.values()) {
    const outer = largest(list.filter(d => d.runsLeft))
    if (outer === undefined) continue
    regions.push({ outer: outer.contour, holes: list.filter(d => d !== outer).map(d => d.contour) })
  }
  return regions
}

/** Hardly ever are there two: a body has one outer contour. */
function largest(list: readonly Drawn[]): Drawn | undefined {
  let [best] = list
  for (const d of list) if (d !== best && signedArea(d.contour) > signedArea(best!.contour)) best = d
  return best
}
