import { coincident } from '../../number/tolerance.ts'
import { signedArea } from '../measure/area.ts'
import type { Contour, Region } from '../shape/contour.ts'
import { distance, type Point } from '../shape/point.ts'
import { arcOf, line, type Segment } from '../shape/segment.ts'
import { type Chains, firstOf } from './chains.ts'
import type { Faces } from './faces.ts'
import type { Graph } from './graph.ts'
import { int8Array, int32Array } from './memory.ts'
import { halfRange, isFlat, type Pack, pointAt, sourceAt } from './pack.ts'
import type { Edges } from './split.ts'
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

/** A contour to be: its half-edges are those of a list from `begin` up to `end`. And the number of the body that it bounds. */
type Loop = { readonly body: number; readonly begin: number; readonly end: number }

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

function originOf(edges: Edges, h: number): number {
  return h & 1 ? edges.to[h >> 1]! : edges.from[h >> 1]!
}

type Drawn = { readonly contour: Contour; readonly runsLeft: boolean }

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

/** Turns half-edges into segments: pieces of one segment that follow each other become one again. */
function createPen(pack: Pack, edges: Edges, leaving: Int8Array, halfEdges: Int32Array) {
  const { x, y } = pack
  /** Points made where contours touch: they share them. */
  const shared = new Map<number, Point>()
  const placeOf = (v: number): Point => {
    const known = pointAt(pack, v) ?? shared.get(v)
    if (known !== undefined) return known
    const made = { x: x[v]!, y: y[v]! }
    if (leaving[v] === 2) shared.set(v, made)
    return made
  }
  const endOf = (h: number) => (h & 1 ? edges.from[h >> 1]! : edges.to[h >> 1]!)

  /** Whether half-edge g carries on what h began, through a vertex that nothing else needs. */
  const carriesOn = (h: number, g: number): boolean => {
    const s = edges.segment[h >> 1]!
    const t = edges.segment[g >> 1]!
    if (pack.source[s] !== pack.source[t] || (h & 1) !== (g & 1)) return false
    return leaving[originOf(edges, g)] !== 2
  }

  return ({ begin, end }: Loop): Drawn | undefined => {
    const n = end - begin
    if (n < 2) return undefined
    let first = begin
    let count = 0
    for (let k = begin; k < end; k++) {
      if (carriesOn(halfEdges[k === begin ? end - 1 : k - 1]!, halfEdges[k]!)) continue
      if (count === 0) first = k
      count++
    }
    // all pieces of one circle, say, carry on the last: they stay as they are
    const whole = count === 0
    const halfEdge = (k: number) => halfEdges[first + k < end ? first + k : first + k - n]!
    const segments = new Array<Segment>(whole ? n : count)
    let made = 0
    // twice the area: surely within `doubt` of this, which nearly always tells what is asked
    let twice = 0
    let doubt = 0
    let length = 0
    const corner = placeOf(originOf(edges, halfEdge(0)))
    let from = corner
    for (let k = 0; k < n; ) {
      const h = halfEdge(k)
      let last = h
      let straight = edges.straight[h >> 1] === 1
      k++
      while (!whole && k < n && carriesOn(last, halfEdge(k))) {
        last = halfEdge(k)
        straight &&= edges.straight[last >> 1] === 1
        k++
      }
      const to = k === n ? corner : placeOf(endOf(last))
      const segment = makeSegment(pack, edges, h, from, to, straight)
      segments[made++] = segment
      twice += (from.x - corner.x) * (to.y - corner.y) - (from.y - corner.y) * (to.x - corner.x)
      const dx = to.x - from.x
      const dy = to.y - from.y
      length += Math.abs(dx) + Math.abs(dy)
      if (segment.kind === 'arc') {
        const range = halfRange * (dx * dx + dy * dy)
        const ux = from.x - segment.centre.x
        const uy = from.y - segment.centre.y
        if (segment.turn * (ux * dy - uy * dx) < 0) doubt = Infinity
        twice += segment.turn * range
        doubt += range
      }
      from = to
    }
    const contour: Contour = { segments, closed: true }
    if (!(Math.abs(twice) - doubt > coincident * length)) twice = 2 * signedArea(contour)
    // narrower than the distance at which its two sides are one
    if (Math.abs(twice) <= coincident * length) return undefined
    return { contour, runsLeft: twice > 0 }
  }
}

function makeSegment(
  pack: Pack,
  edges: Edges,
  h: number,
  from: Point,
  to: Point,
  straight: boolean,
): Segment {
  const e = h >> 1
  const s = edges.segment[e]!
  const put = sourceAt(pack, pack.source[s]!)
  const original = typeof put === 'object' ? put : undefined
  if (original !== undefined && (h & 1) === 0 && original.from === from && original.to === to) return original
  const tag = typeof put === 'object' ? put.tag : put
  if (pack.turn[s] === 0) return line(from, to, tag)
  const centre = original?.kind === 'arc' ? original.centre : { x: pack.centreX[s]!, y: pack.centreY[s]! }
  const radius = original?.kind === 'arc' ? original.radius : distance(centre, from)
  const dx = to.x - from.x
  const dy = to.y - from.y
  if (straight && isFlat(dx * dx + dy * dy, radius)) return line(from, to, tag)
  const turn = pack.turn[s]! > 0 === ((h & 1) === 0) ? 1 : -1
  return arcOf(from, to, centre, radius, turn, tag)
}
