import { type BoxTree, type Stretch, widthOf } from './box-tree.ts'
import type { Graph } from './graph.ts'
import {
  clearance,
  doubt,
  edgeHeight,
  fractions,
  type Hit,
  leastClearance,
  levelHits,
  levelThrough,
} from './level-line.ts'
import type { Pack } from './pack.ts'
import { agrees, type Links, linkBefore, partOf, type Rings } from './parts.ts'
import type { Edges } from './split.ts'
import { createGroups, type Groups, groupOf, join } from './vertices.ts'

/**
 * A walk along a level line: the hits it saw, whether these are all of the line, where it made links, and the least
 * clearance on its way.
 */
type Walk = {
  readonly hits: readonly Hit[]
  readonly whole: boolean
  readonly linkAt: readonly number[]
  readonly gap: number
}

/**
 * Links every part of the arrangement to what lies left of it: `through[p]`, an edge of part p, says where.
 *
 * From that edge a level line is followed to the left, and every two parts that come one after the other on it
 * are linked, up to the first that was not linked with part p in any way yet, or to what lies far away. So
 * every part adds a link between two that were apart, and in the end all hang together with what is far away.
 * Only the stretch that is walked along is looked up, so a part costs what lies between it and its neighbour.
 *
 * @returns the first part whose level line contradicts its windings, where there is one; else for every part whether
 *   the whole of a level line through it was looked at, with no two hits so near that their order is in doubt
 */
export function linkParts(
  pack: Pack,
  edges: Edges,
  graph: Graph,
  tree: BoxTree,
  rings: Rings,
  through: readonly number[],
  links: Links,
): { readonly contradicts: number } | { readonly seenWhole: readonly boolean[] } {
  const groups = createGroups(pack.memory, through.length + 1)
  const seenWhole: boolean[] = []
  for (let p = 0; p < through.length; p++) {
    const walk = walkLeft(pack, edges, graph, tree, rings, groups, through[p]!)
    if (walk === undefined || !agrees(walk.hits, rings, walk.whole ? 0 : 1)) return { contradicts: p }
    seenWhole.push(walk.whole && leastClearance(walk.hits) > doubt)
    for (const k of walk.linkAt) {
      linkBefore(walk.hits, rings, k, links)
      join(groups, partOf(walk.hits, rings, k), k === 0 ? through.length : partOf(walk.hits, rings, k - 1))
    }
  }
  return { seenWhole }
}

/** So few edges are looked up all at once: looking up stretches of them costs more. */
const few = 1000

/** The walk from an edge along the level where the hits on its way are clearest apart. */
function walkLeft(
  pack: Pack,
  edges: Edges,
  graph: Graph,
  tree: BoxTree,
  rings: Rings,
  groups: Groups,
  e: number,
): Walk | undefined {
  const whole = widthOf(tree)
  const { from, to } = edges
  const leftmost = Math.min(pack.x[from[e]!]!, pack.x[to[e]!]!)
  const rightmost = Math.max(pack.x[from[e]!]!, pack.x[to[e]!]!)
  const height = edgeHeight(pack, edges, e)
  let best: Walk | undefined
  for (const fraction of fractions) {
    const level = levelThrough(pack, edges, e, fraction)
    let walk: Walk | 'look farther' | undefined = 'look farther'
    // twice as far each time; an arc leaves its ends by no more than its height or its chord
    let reach = edges.count <= few ? Infinity : height + (rightmost - leftmost) + 2 * doubt
    while (walk === 'look farther') {
      const stretch = { left: leftmost - reach, right: rightmost + reach }
      const hits = levelHits(pack, edges, graph, tree, level, stretch)
      walk = follow(hits, rings, groups, e, ends(stretch, whole))
      reach *= 2
    }
    if (walk !== undefined && (best === undefined || walk.gap > best.gap)) best = walk
    if (best !== undefined && best.gap > doubt) break
  }
  return best
}

/** Whether nothing lies left, and nothing right, of a stretch of a level line. */
type Ends = { readonly left: boolean; readonly right: boolean }

function ends(stretch: Stretch, whole: Stretch): Ends {
  // said the other way round, so that a coordinate that is no number ends the search
  return { left: !(stretch.left > whole.left), right: !(stretch.right < whole.right) }
}

/** Walks from edge e to the left; undefined where the line does not meet the edge. */
function follow(
  hits: readonly Hit[],
  rings: Rings,
  groups: Groups,
  e: number,
  isEnd: Ends,
): Walk | 'look farther' | undefined {
  const start = hits.findIndex(({ edge }) => edge === e)
  if (start === -1) return isEnd.left && isEnd.right ? undefined : 'look farther'
  const own = groupOf(groups, partOf(hits, rings, start))
  const bundleEnd = endIndex(hits, start, 1)
  if (bundleEnd === hits.length - 1 && !isEnd.right) return 'look farther'
  const linkAt: number[] = []
  let k = start
  for (;;) {
    // of a part whose hits are too near each other to be sure of their order, the one farthest to the left
    const bundleStart = endIndex(hits, k, -1)
    if (bundleStart === 0 && !isEnd.left) return 'look farther'
    const part = partOf(hits, rings, k)
    for (let at = k; at >= bundleStart; at--) if (partOf(hits, rings, at) === part) k = at
    if (k === 0) {
      linkAt.push(0)
      break
    }
    const beside = partOf(hits, rings, k - 1)
    if (beside !== part) linkAt.push(k)
    if (groupOf(groups, beside) !== own) break
    k--
  }
  if (k > 0 && endIndex(hits, k - 1, -1) === 0 && !isEnd.left) return 'look farther'
  let gap = Infinity
  const last = Math.min(hits.length - 1, start + 1)
  for (let m = Math.max(1, k - 1); m <= last; m++) gap = Math.min(gap, clearance(hits, m))
  return { hits, whole: isEnd.left && isEnd.right, linkAt, gap }
}

/** The last of the hits from k on, to the right or to the left, that are too near each other to be sure of their order. */
function endIndex(hits: readonly Hit[], k: number, step: 1 | -1): number {
  let at = k
  while (at + step >= 0 && at + step < hits.length) {
    if (clearance(hits, step === 1 ? at + 1 : at) > doubt) break
    at += step
  }
  return at
}
