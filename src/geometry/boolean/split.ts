import { type Crossings, rounding } from './find-crossings.ts'
import { endsOf, float64Array, int8Array, int32Array } from './memory.ts'
import { isFlat, type Pack } from './pack.ts'
import { groupOf, join } from './vertices.ts'

/**
 * Segments cut at their vertices. Edge e runs from vertex `from` to vertex `to` along segment `segment`; the
 * edges of segment s are those numbered from pieceStart[s] up to pieceStart[s + 1], in the order of the
 * segment.
 */
export type Edges = {
  count: number
  from: Int32Array
  to: Int32Array
  segment: Int32Array
  /**
   * 1 where the piece is straight: a piece of a line, or one of an arc so short that it stands no farther than
   * `coincident` from its chord. The direction of so short an arc is that of its snapped ends, no longer that
   * of its circle.
   */
  straight: Int8Array
  readonly pieceStart: Int32Array
}

/** The vertex that a half-edge leaves: 2e runs along edge e, 2e + 1 back along it. */
export function originOf(edges: Edges, h: number): number {
  return h & 1 ? edges.to[h >> 1]! : edges.from[h >> 1]!
}

/**
 * Snaps once and splits: along every segment, vertices within `snap` of their neighbours become one, a
 * point of the input wherever one takes part; the pieces between what remains are the edges.
 */
export function splitSegments(pack: Pack, crossings: Crossings, snap: number): Edges {
  const { groups } = crossings
  const n = pack.segmentCount
  const { start, vertex } = bySegment(pack, crossings)
  const along = float64Array(pack.memory, vertex.length)

  const { from, to, x, y } = pack
  for (let s = 0; s < n; s++) {
    const begin = start[s]!
    const end = start[s + 1]!
    if (begin < end) {
      sortAlong(pack, s, vertex, along, begin, end)
      joinNeighbours(pack, crossings, s, vertex, begin, end, snap)
    } else {
      const a = from[s]!
      const b = to[s]!
      if (Math.abs(x[b]! - x[a]!) <= snap && Math.abs(y[b]! - y[a]!) <= snap) {
        joinIfOne(pack, crossings, a, b, snap)
      }
    }
  }

  const most = n + vertex.length
  const { memory } = pack
  const edges: Edges = {
    count: 0,
    from: int32Array(memory, most),
    to: int32Array(memory, most),
    segment: int32Array(memory, most),
    straight: int8Array(memory, most),
    pieceStart: int32Array(memory, n + 1),
  }
  for (let s = 0; s < n; s++) {
    edges.pieceStart[s] = edges.count
    const begin = start[s]!
    const end = start[s + 1]!
    let at = groupOf(groups, pack.from[s]!)
    if (begin < end) {
      // what a vertex was joined to may lie elsewhere along the segment
      let moved = false
      for (let k = begin; k < end; k++) {
        const v = groupOf(groups, vertex[k]!)
        if (v !== vertex[k]) {
          vertex[k] = v
          moved = true
        }
      }
      if (moved) sortAlong(pack, s, vertex, along, begin, end)
      for (let k = begin; k < end; k++) at = addEdge(pack, edges, s, at, vertex[k]!)
    }
    addEdge(pack, edges, s, at, groupOf(groups, pack.to[s]!))
  }
  edges.pieceStart[n] = edges.count
  return edges
}

function addEdge(pack: Pack, edges: Edges, s: number, from: number, to: number): number {
  if (from === to) return from
  const e = edges.count++
  edges.from[e] = from
  edges.to[e] = to
  edges.segment[e] = s
  const r = pack.radius[s]!
  if (r === 0) edges.straight[e] = 1
  else if (from !== pack.from[s] || to !== pack.to[s]) {
    const dx = pack.x[to]! - pack.x[from]!
    const dy = pack.y[to]! - pack.y[from]!
    if (isFlat(dx * dx + dy * dy, r)) edges.straight[e] = 1
  }
  return to
}

/** The crossings' vertices gathered by segment: those of s stand from start[s] up to start[s + 1]. */
function bySegment(
  { memory, segmentCount: n }: Pack,
  crossings: Crossings,
): { start: Int32Array; vertex: Int32Array } {
  const { count } = crossings
  const start = int32Array(memory, n + 1)
  const vertex = int32Array(memory, count)
  for (let k = 0; k < count; k++) start[crossings.segment[k]!]!++
  endsOf(start)
  for (let k = count - 1; k >= 0; k--) vertex[--start[crossings.segment[k]!]!] = crossings.vertex[k]!
  return { start, vertex }
}

/** Where a vertex stands along a segment: a distance on a line, an angle on an arc. */
function placeAlong(pack: Pack, s: number, v: number): number {
  const a = pack.from[s]!
  const ax = pack.x[a]!
  const ay = pack.y[a]!
  const px = pack.x[v]!
  const py = pack.y[v]!
  if (pack.radius[s] === 0) {
    const b = pack.to[s]!
    return (px - ax) * (pack.x[b]! - ax) + (py - ay) * (pack.y[b]! - ay)
  }
  const cx = pack.centreX[s]!
  const cy = pack.centreY[s]!
  const ux = ax - cx
  const uy = ay - cy
  const vx = px - cx
  const vy = py - cy
  const angle = Math.atan2(pack.turn[s]! * (ux * vy - uy * vx), ux * vx + uy * vy)
  // an arc turns at most half: what seems to lie a quarter turn before it lies at its end
  return angle < -Math.PI / 2 ? angle + 2 * Math.PI : angle
}

/** Insertion is quickest for the few vertices that a segment usually has. */
const few = 24

function sortAlong(
  pack: Pack,
  s: number,
  vertex: Int32Array,
  along: Float64Array,
  begin: number,
  end: number,
): void {
  if (end - begin === 1) return
  for (let k = begin; k < end; k++) along[k] = placeAlong(pack, s, vertex[k]!)
  if (end - begin > few) {
    const sorted = Array.from({ length: end - begin }, (_, k) => begin + k)
      .sort((p, q) => along[p]! - along[q]! || vertex[p]! - vertex[q]!)
      .map(k => vertex[k]!)
    vertex.set(sorted, begin)
    return
  }
  for (let k = begin + 1; k < end; k++) {
    const a = along[k]!
    const v = vertex[k]!
    let m = k - 1
    while (m >= begin && (along[m]! > a || (along[m] === a && vertex[m]! > v))) {
      along[m + 1] = along[m]!
      vertex[m + 1] = vertex[m]!
      m--
    }
    along[m + 1] = a
    vertex[m + 1] = v
  }
}

function joinNeighbours(
  pack: Pack,
  crossings: Crossings,
  s: number,
  vertex: Int32Array,
  begin: number,
  end: number,
  snap: number,
): void {
  let at = pack.from[s]!
  for (let k = begin; k < end; k++) {
    const v = vertex[k]!
    if (v !== at) joinIfOne(pack, crossings, at, v, snap)
    at = v
  }
  joinIfOne(pack, crossings, at, pack.to[s]!, snap)
}

function joinIfOne(pack: Pack, crossings: Crossings, v: number, w: number, snap: number): void {
  const dx = pack.x[w]! - pack.x[v]!
  const dy = pack.y[w]! - pack.y[v]!
  const square = dx * dx + dy * dy
  if (square > snap * snap || !join(crossings.groups, v, w)) return
  if (square > rounding(pack.x[v]!, pack.y[v]!) ** 2) crossings.moved = true
}
