import { coincident } from '../../number/tolerance.ts'
import type { Contour, Region } from '../shape/contour.ts'
import { distance, type Point } from '../shape/point.ts'
import { type Arc, arcOf, line, type Segment } from '../shape/segment.ts'
import { type Chains, firstOf } from './chains.ts'
import type { Faces } from './faces.ts'
import type { Graph } from './graph.ts'
import { int8Array } from './memory.ts'
import { isFlat, type Pack } from './pack.ts'
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

  const draw = createPen(pack, edges, leaving)
  const contours: { body: number; edges: number[] }[] = []
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
      contours.push({ body, edges: edgesOf(chains, loop) })
    }
  }
  return assemble(contours, draw)
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
 * The half-edges of half-chains, one after the other. The first is the one of the first half-chain with the lowest
 * number, so where a contour begins does not depend on which edges make a chain.
 */
function edgesOf({ start }: Chains, path: readonly number[]): number[] {
  const list: number[] = []
  const add = (h: number, lowest: number) => {
    const end = start[(h >> 1) + 1]!
    if (h & 1) for (let e = end - 1; e >= lowest; e--) list.push(2 * e + 1)
    else for (let e = lowest; e < end; e++) list.push(2 * e)
  }
  const first = path[0]!
  const lowest = start[first >> 1]!
  if (first & 1) list.push(2 * lowest + 1)
  else add(first, lowest)
  for (let k = 1; k < path.length; k++) add(path[k]!, start[path[k]! >> 1]!)
  if (first & 1) add(first, lowest + 1)
  return list
}

function originOf(edges: Edges, h: number): number {
  return h & 1 ? edges.to[h >> 1]! : edges.from[h >> 1]!
}

type Drawn = { readonly contour: Contour; readonly area: number; readonly length: number }

function assemble(
  contours: readonly { body: number; edges: number[] }[],
  draw: (edges: readonly number[]) => Drawn | undefined,
): Region[] {
  const bodies = new Map<number, Drawn[]>()
  for (const { body, edges } of contours) {
    const drawn = draw(edges)
    // narrower than the distance at which its two sides are one
    if (drawn === undefined || 2 * Math.abs(drawn.area) <= coincident * drawn.length) continue
    const list = bodies.get(body)
    if (list === undefined) bodies.set(body, [drawn])
    else list.push(drawn)
  }
  const regions: Region[] = []
  for (const list of bodies.values()) {
    let outer = list[0]!
    for (const drawn of list) if (drawn.area > outer.area) outer = drawn
    if (outer.area <= 0) continue
    regions.push({ outer: outer.contour, holes: list.filter(d => d !== outer).map(d => d.contour) })
  }
  return regions
}

/** Turns half-edges into segments: pieces of one segment that follow each other become one again. */
function createPen(pack: Pack, edges: Edges, leaving: Int8Array) {
  const { points, x, y } = pack
  const pointAt = (v: number): Point => {
    let p = points[v]
    if (p === undefined) {
      p = { x: x[v]!, y: y[v]! }
      points[v] = p
    }
    return p
  }
  const endOf = (h: number) => (h & 1 ? edges.from[h >> 1]! : edges.to[h >> 1]!)

  /** Whether half-edge g carries on what h began, through a vertex that nothing else needs. */
  const carriesOn = (h: number, g: number): boolean => {
    const s = edges.segment[h >> 1]!
    const t = edges.segment[g >> 1]!
    if (pack.source[s] !== pack.source[t] || (h & 1) !== (g & 1)) return false
    return leaving[originOf(edges, g)] !== 2
  }

  return (loop: readonly number[]): Drawn | undefined => {
    const n = loop.length
    if (n < 2) return undefined
    let begin = 0
    while (begin < n && carriesOn(loop[begin === 0 ? n - 1 : begin - 1]!, loop[begin]!)) begin++
    const whole = begin === n
    const turned = whole || begin === 0 ? loop : [...loop.slice(begin), ...loop.slice(0, begin)]
    const segments: Segment[] = []
    let area = 0
    let length = 0
    const corner = pointAt(originOf(edges, turned[0]!))
    let from = corner
    for (let k = 0; k < n; ) {
      const h = turned[k]!
      let last = h
      let straight = edges.straight[h >> 1] === 1
      k++
      while (!whole && k < n && carriesOn(last, turned[k]!)) {
        last = turned[k]!
        straight &&= edges.straight[last >> 1] === 1
        k++
      }
      const to = pointAt(endOf(last))
      const made = makeSegment(pack, edges, h, from, to, straight)
      segments.push(made)
      area += ((from.x - corner.x) * (to.y - corner.y) - (from.y - corner.y) * (to.x - corner.x)) / 2
      length += Math.abs(to.x - from.x) + Math.abs(to.y - from.y)
      if (made.kind === 'arc') area += circularSegment(made)
      from = to
    }
    return { contour: { segments, closed: true }, area, length }
  }
}

/** The area between an arc and its chord, positive for a left turn. */
function circularSegment({ from, to, centre, radius, turn }: Arc): number {
  const ux = from.x - centre.x
  const uy = from.y - centre.y
  const vx = to.x - centre.x
  const vy = to.y - centre.y
  const sine = ux * vy - uy * vx
  let angle = turn * Math.atan2(sine, ux * vx + uy * vy)
  if (angle <= 0) angle += 2 * Math.PI
  return (turn * angle * radius * radius - sine) / 2
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
  const source = pack.source[s]!
  const put = pack.sources[source]
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
