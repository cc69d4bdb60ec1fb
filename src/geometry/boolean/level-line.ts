import { coincident } from '../../number/tolerance.ts'
import { type BoxTree, type Stretch, visitLevel, widthOf } from './box-tree.ts'
import type { Graph } from './graph.ts'
import type { Pack } from './pack.ts'
import type { Edges } from './split.ts'

/**
 * Where a level line meets an edge; `up` 1 where the edge rises there, 0 where it falls, `steep` the sine of the
 * angle between the two.
 */
export type Hit = {
  readonly x: number
  readonly steep: number
  readonly edge: number
  readonly chain: number
  readonly up: 0 | 1
}

/**
 * Edges nearer than this where a level line meets them may come in either order: each was snapped by up to
 * `coincident`, at either end.
 */
export const doubt = 4 * coincident

/** How far hit k is from the hit before it, across the flatter of the two edges. */
export function clearance(hits: readonly Hit[], k: number): number {
  const here = hits[k]!
  const before = hits[k - 1]!
  return (here.x - before.x) * Math.min(here.steep, before.steep)
}

/** How near each other the nearest two of some hits are. */
export function leastClearance(hits: readonly Hit[]): number {
  let gap = Infinity
  for (let k = 1; k < hits.length; k++) gap = Math.min(gap, clearance(hits, k))
  return gap
}

/** Fractions of an edge's height at which its level line is tried until its hits are clearly apart. */
export const fractions = [0.5, 0.38, 0.63, 0.27, 0.74, 0.44, 0.57, 0.31, 0.69, 0.17, 0.83]

/** Of so many hits two are always near each other, at every height: one line is as good as another. */
const many = 1000

/** The edges that the level line through an edge meets, from left to right. */
export function castThrough(
  pack: Pack,
  edges: Edges,
  graph: Graph,
  tree: BoxTree,
  e: number,
): readonly Hit[] {
  const whole = widthOf(tree)
  let best: readonly Hit[] = []
  let bestGap = -1
  for (const fraction of fractions) {
    const level = levelThrough(pack, edges, e, fraction)
    const hits = levelHits(pack, edges, graph, tree, level, whole)
    const gap = leastClearance(hits)
    if (gap > bestGap) {
      best = hits
      bestGap = gap
    }
    if (bestGap > doubt || hits.length > many) break
  }
  return best
}

/** The level at a fraction of an edge's height. */
export function levelThrough(pack: Pack, edges: Edges, e: number, fraction: number): number {
  const low = lowest(pack, edges, e)
  return low + fraction * (highest(pack, edges, e) - low)
}

/** The edges that a stretch of a level line meets, from left to right. */
export function levelHits(
  pack: Pack,
  edges: Edges,
  graph: Graph,
  tree: BoxTree,
  level: number,
  stretch: Stretch,
): Hit[] {
  const hits: Hit[] = []
  visitLevel(tree, level, stretch, segment => {
    for (let k = edges.pieceStart[segment]!; k < edges.pieceStart[segment + 1]!; k++) {
      // one that was merged into another is met in its stead
      const chain = graph.chains.of[k]!
      if (graph.standsFor[chain] === chain) meetLevel(pack, edges, k, chain, level, hits)
    }
  })
  const within = isWhole(stretch, widthOf(tree))
    ? hits
    : hits.filter(({ x }) => x >= stretch.left && x <= stretch.right)
  return within.sort((p, q) => p.x - q.x || p.edge - q.edge)
}

/** Whether a stretch of a level line has all of it that there is anything on. */
export function isWhole(stretch: Stretch, whole: Stretch): boolean {
  // said the other way round, so that a coordinate that is no number counts as an end
  return !(stretch.left > whole.left) && !(stretch.right < whole.right)
}

/**
 * Where an edge meets a level line. An end on the line counts as above it, so a chain of edges is met the right
 * number of times even through its vertices.
 */
function meetLevel(pack: Pack, edges: Edges, edge: number, chain: number, level: number, hits: Hit[]): void {
  const s = edges.segment[edge]!
  const { x, y } = pack
  const ax = x[edges.from[edge]!]!
  const ay = y[edges.from[edge]!]!
  const bx = x[edges.to[edge]!]!
  const by = y[edges.to[edge]!]!
  const startsBelow = ay < level
  const endsBelow = by < level
  if (edges.straight[edge] === 1) {
    if (startsBelow === endsBelow) return
    const steep = Math.abs(by - ay) / Math.sqrt((bx - ax) ** 2 + (by - ay) ** 2)
    hits.push({ x: ax + ((level - ay) / (by - ay)) * (bx - ax), steep, edge, chain, up: startsBelow ? 1 : 0 })
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
  const steep = half / r
  // a counter-clockwise arc rises on the right half of its circle and falls on the left half
  if (startsBelow !== endsBelow) {
    const x = startsBelow === turn > 0 ? cx + half : cx - half
    hits.push({ x, steep, edge, chain, up: startsBelow ? 1 : 0 })
  } else if ((reachesTop && startsBelow && !aboveTop) || (reachesBottom && !startsBelow && aboveBottom)) {
    hits.push({ x: cx + half, steep, edge, chain, up: turn > 0 ? 1 : 0 })
    hits.push({ x: cx - half, steep, edge, chain, up: turn > 0 ? 0 : 1 })
  }
}

/** What the height of an edge does not exceed: no edge turns more than half, so an arc's sagitta is half its chord at most. */
export function mostHeight(pack: Pack, edges: Edges, e: number): number {
  const a = edges.from[e]!
  const b = edges.to[e]!
  const high = Math.abs(pack.y[b]! - pack.y[a]!)
  return edges.straight[e] === 1 ? high : high + (high + Math.abs(pack.x[b]! - pack.x[a]!)) / 2
}

export function edgeHeight(pack: Pack, edges: Edges, e: number): number {
  return highest(pack, edges, e) - lowest(pack, edges, e)
}

/** The highest y of an edge: that of an end, or of the top of the circle where an arc passes it. */
function highest(pack: Pack, edges: Edges, e: number): number {
  const { x, y } = pack
  const a = edges.from[e]!
  const b = edges.to[e]!
  const ends = Math.max(y[a]!, y[b]!)
  if (edges.straight[e] === 1) return ends
  const s = edges.segment[e]!
  const cx = pack.centreX[s]!
  const turn = pack.turn[s]!
  if (!(turn * (x[a]! - cx) > 0 && turn * (x[b]! - cx) < 0)) return ends
  const top = pack.centreY[s]! + pack.radius[s]!
  return Math.max(top, ends)
}

/** The lowest y of an edge. */
function lowest(pack: Pack, edges: Edges, e: number): number {
  const { x, y } = pack
  const a = edges.from[e]!
  const b = edges.to[e]!
  const ends = Math.min(y[a]!, y[b]!)
  if (edges.straight[e] === 1) return ends
  const s = edges.segment[e]!
  const cx = pack.centreX[s]!
  const turn = pack.turn[s]!
  if (!(turn * (x[a]! - cx) < 0 && turn * (x[b]! - cx) > 0)) return ends
  const bottom = pack.centreY[s]! - pack.radius[s]!
  return Math.min(bottom, ends)
}
