import { coincident } from '../../number/tolerance.ts'
import { type BoxTree, type Stretch, visitLevel, widthOf } from './box-tree.ts'
import type { Graph } from './graph.ts'
import type { Pack } from './pack.ts'
import type { Edges } from './split.ts'

/**
 * Where a level line meets an edge; `up` 1 where the edge rises there, 0 where it falls, `steep` the sine of the
 * angle between the two.
 */
export type Hit = { readonly x: number; readonly steep: number; readonly edge: number; readonly up: 0 | 1 }

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

/** Fractions of an edge's height at which its level line is tried until its hits are clearly apart. */
const fractions = [0.5, 0.38, 0.63, 0.27, 0.74, 0.44, 0.57, 0.31, 0.69, 0.17, 0.83]

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
  for (const level of levelsThrough(pack, edges, e)) {
    const hits = levelHits(pack, edges, graph, tree, level, whole)
    let gap = Infinity
    for (let k = 1; k < hits.length; k++) gap = Math.min(gap, clearance(hits, k))
    if (gap > bestGap) {
      best = hits
      bestGap = gap
    }
    if (bestGap > doubt || hits.length > many) break
  }
  return best
}

/** The heights at which level lines through an edge are tried. */
export function levelsThrough(pack: Pack, edges: Edges, e: number): readonly number[] {
  const [low, high] = heightOf(pack, edges, e)
  return fractions.map(fraction => low + fraction * (high - low))
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
      if (graph.standsFor[k] === k) meetLevel(pack, edges, k, level, hits)
    }
  })
  return hits
    .filter(({ x }) => x >= stretch.left && x <= stretch.right)
    .sort((p, q) => p.x - q.x || p.edge - q.edge)
}

/**
 * Where an edge meets a level line. An end on the line counts as above it, so a chain of edges is met the right
 * number of times even through its vertices.
 */
function meetLevel(pack: Pack, edges: Edges, e: number, level: number, hits: Hit[]): void {
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
    hits.push({ x: ax + ((level - ay) / (by - ay)) * (bx - ax), steep, edge: e, up: startsBelow ? 1 : 0 })
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
  const right = (up: boolean) => hits.push({ x: cx + half, steep: half / r, edge: e, up: up ? 1 : 0 })
  const left = (up: boolean) => hits.push({ x: cx - half, steep: half / r, edge: e, up: up ? 1 : 0 })
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

export function edgeHeight(pack: Pack, edges: Edges, e: number): number {
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
