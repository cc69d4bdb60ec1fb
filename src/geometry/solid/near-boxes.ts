import { areNear, type Box3, boxAround, joinBoxes } from './box3.ts'
import { midpoint3, type Point3 } from './point3.ts'

/** Two boxes by their places in their lists. */
export type IndexPair = readonly [first: number, second: number]

/**
 * The pairs of boxes of one list that come as near to each other as `reach` (mm), each once, the earlier first, in the
 * order of the list. Time grows with n·log n and with the pairs found.
 */
export function nearAmong(boxes: readonly Box3[], reach: number): readonly IndexPair[] {
  const tree = boxTree(boxes)
  if (tree === undefined) return []
  return inOrder(nearPairs(tree, tree, reach).map(([i, j]): IndexPair => (i < j ? [i, j] : [j, i])))
}

/** The pairs of a box of the one list and a box of the other that come as near as `reach` (mm), in the order of the lists. */
export function nearBetween(a: readonly Box3[], b: readonly Box3[], reach: number): readonly IndexPair[] {
  const first = boxTree(a)
  const second = boxTree(b)
  return first === undefined || second === undefined ? [] : inOrder(nearPairs(first, second, reach))
}

type Node = Leaf | Fork
type Leaf = { readonly kind: 'leaf'; readonly box: Box3; readonly places: readonly Place[] }
type Fork = { readonly kind: 'fork'; readonly box: Box3; readonly nodes: readonly [Node, Node] }

/** A box, and where it stands in its list. */
type Place = { readonly index: number; readonly box: Box3 }

/** So few boxes are asked one by one sooner than they are sorted: most parts have no more. */
const mostInLeaf = 8

/** A tree that halves its boxes by their middles along the axis in which these spread farthest. */
function boxTree(boxes: readonly Box3[]): Node | undefined {
  return boxes.length === 0 ? undefined : grow(boxes.map((box, index) => ({ index, box })))
}

function grow(places: readonly Place[]): Node {
  const box = joinBoxes(places.map(place => place.box))
  if (places.length <= mostInLeaf) return { kind: 'leaf', places, box }
  const spread = boxAround(places.map(middle))
  const wide = (axis: Axis) => spread.high[axis] - spread.low[axis]
  const axis = axes.reduce((best, next) => (wide(next) > wide(best) ? next : best))
  const sorted = places.toSorted((a, b) => middle(a)[axis] - middle(b)[axis] || a.index - b.index)
  const half = sorted.length >> 1
  return { kind: 'fork', nodes: [grow(sorted.slice(0, half)), grow(sorted.slice(half))], box }
}

type Axis = keyof Point3

const axes: readonly Axis[] = ['x', 'y', 'z']

function middle({ box: { low, high } }: Place): Point3 {
  return midpoint3(low, high)
}

function nearPairs(a: Node, b: Node, reach: number): IndexPair[] {
  const found: IndexPair[] = []
  const visit = (p: Node, q: Node): void => {
    if (!areNear(p.box, q.box, reach)) return
    if (p.kind === 'leaf') {
      if (q.kind === 'leaf') findInLeaves(p, q, reach, found)
      else for (const node of q.nodes) visit(p, node)
    } else if (q.kind === 'leaf') for (const node of p.nodes) visit(node, q)
    else if (p === q) {
      const [left, right] = p.nodes
      visit(left, left)
      visit(right, right)
      visit(left, right)
    } else for (const one of p.nodes) for (const other of q.nodes) visit(one, other)
  }
  visit(a, b)
  return found
}

/** Of a leaf with itself each pair once. */
function findInLeaves(p: Leaf, q: Leaf, reach: number, found: IndexPair[]): void {
  for (const one of p.places) {
    for (const other of q.places) {
      if (p === q && other.index <= one.index) continue
      if (areNear(one.box, other.box, reach)) found.push([one.index, other.index])
    }
  }
}

function inOrder(pairs: readonly IndexPair[]): readonly IndexPair[] {
  return pairs.toSorted(([a, b], [c, d]) => a - c || b - d)
}
