import type { Bounds, Contour } from '../shape/contour.ts'
import type { Point } from '../shape/point.ts'
import type { Segment } from '../shape/segment.ts'
import { segmentBounds } from './bounds.ts'
import { rayCrossings } from './inside.ts'
import { nearestOnSegment } from './nearest.ts'

/**
 * The edges of some contours under a binary tree of boxes, for questions that would otherwise look at every
 * edge. Edges that follow one another lie near one another, so the tree is built over them in their order:
 * node 1 is the root, the children of node i are 2i and 2i + 1, and edge k is the leaf `leaves` + k.
 */
export type SegmentTree = {
  readonly segments: readonly Segment[]
  /** For every edge the number of its contour. */
  readonly contours: Int32Array
  /** For every edge its number within its contour. */
  readonly places: Int32Array
  /** A power of two, not less than the number of edges. */
  readonly leaves: number
  /** Left, bottom, right, top of every node; an empty node has none, so it is infinitely far from everything. */
  readonly boxes: Float64Array
}

export function segmentTree(all: readonly Contour[]): SegmentTree {
  const segments = all.flatMap(c => c.segments)
  const contours = Int32Array.from(all.flatMap((c, i) => c.segments.map(() => i)))
  const places = Int32Array.from(all.flatMap(c => c.segments.map((_, i) => i)))
  let leaves = 1
  while (leaves < segments.length) leaves *= 2
  const boxes = new Float64Array(8 * leaves)
  for (let node = 0; node < 2 * leaves; node++) {
    boxes.set([Infinity, Infinity, -Infinity, -Infinity], 4 * node)
  }
  segments.forEach((s, i) => {
    const { left, bottom, right, top } = segmentBounds(s)
    boxes.set([left, bottom, right, top], 4 * (leaves + i))
  })
  for (let node = leaves - 1; node >= 1; node--) {
    const a = 8 * node
    const b = a + 4
    boxes[4 * node] = Math.min(boxes[a]!, boxes[b]!)
    boxes[4 * node + 1] = Math.min(boxes[a + 1]!, boxes[b + 1]!)
    boxes[4 * node + 2] = Math.max(boxes[a + 2]!, boxes[b + 2]!)
    boxes[4 * node + 3] = Math.max(boxes[a + 3]!, boxes[b + 3]!)
  }
  return { segments, contours, places, leaves, boxes }
}

/** The least distance between a node of one tree and a node of another, by their boxes; in millimetres. */
export function nodeDistance(a: SegmentTree, i: number, b: SegmentTree, j: number): number {
  const p = 4 * i
  const q = 4 * j
  const dx = Math.max(0, b.boxes[q]! - a.boxes[p + 2]!, a.boxes[p]! - b.boxes[q + 2]!)
  const dy = Math.max(0, b.boxes[q + 1]! - a.boxes[p + 3]!, a.boxes[p + 1]! - b.boxes[q + 3]!)
  return Math.sqrt(dx * dx + dy * dy)
}

function pointNodeDistance(tree: SegmentTree, node: number, p: Point): number {
  const i = 4 * node
  const dx = Math.max(0, tree.boxes[i]! - p.x, p.x - tree.boxes[i + 2]!)
  const dy = Math.max(0, tree.boxes[i + 1]! - p.y, p.y - tree.boxes[i + 3]!)
  return Math.sqrt(dx * dx + dy * dy)
}

/** The edge nearest to a point, its nearest point and the distance in millimetres; none in an empty tree. */
export type NearestEdge = { readonly edge: number; readonly point: Point; readonly distance: number }

export function nearestInTree(tree: SegmentTree, p: Point): NearestEdge | undefined {
  let best: NearestEdge | undefined
  const visit = (node: number, away: number): void => {
    if (!(away < (best?.distance ?? Infinity))) return
    if (node >= tree.leaves) {
      const edge = node - tree.leaves
      const found = nearestOnSegment(tree.segments[edge]!, p)
      if (found.distance < (best?.distance ?? Infinity)) best = { ...found, edge }
      return
    }
    const left = pointNodeDistance(tree, 2 * node, p)
    const right = pointNodeDistance(tree, 2 * node + 1, p)
    if (left <= right) {
      visit(2 * node, left)
      visit(2 * node + 1, right)
    } else {
      visit(2 * node + 1, right)
      visit(2 * node, left)
    }
  }
  visit(1, pointNodeDistance(tree, 1, p))
  return best
}

/** Whether a point is inside the closed contours of the tree by the even-odd rule; not for points on them. */
export function insideTree(tree: SegmentTree, p: Point): boolean {
  let crossings = 0
  const visit = (node: number): void => {
    const i = 4 * node
    // a ray to the right never meets what is wholly above, below or to the left
    if (!(p.y >= tree.boxes[i + 1]! && p.y <= tree.boxes[i + 3]! && p.x <= tree.boxes[i + 2]!)) return
    if (node >= tree.leaves) {
      crossings += rayCrossings(tree.segments[node - tree.leaves]!, p)
      return
    }
    visit(2 * node)
    visit(2 * node + 1)
  }
  visit(1)
  return crossings % 2 === 1
}

/** Calls `see` for every edge whose box reaches into `box`, until `see` gives true; gives whether it did. */
export function someInBox(tree: SegmentTree, box: Bounds, see: (edge: number) => boolean): boolean {
  const visit = (node: number): boolean => {
    const i = 4 * node
    if (tree.boxes[i]! > box.right || tree.boxes[i + 2]! < box.left) return false
    if (tree.boxes[i + 1]! > box.top || tree.boxes[i + 3]! < box.bottom) return false
    if (node >= tree.leaves) return see(node - tree.leaves)
    return visit(2 * node) || visit(2 * node + 1)
  }
  return visit(1)
}
