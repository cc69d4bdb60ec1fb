import { areNear, type Box3, joinBoxes } from './box3.ts'

/** Two boxes by their places in their lists. */
export type IndexPair = readonly [first: number, second: number]

/**
 * The pairs of boxes of one list that come as near to each other as `reach` (mm), each once, the earlier first, in the
 * order of the list. Time grows with n·log n and with the pairs found.
 */
export function nearAmong(boxes: readonly Box3[], reach: number): readonly IndexPair[] {
  const tree = boxTree(boxes)
  if (tree === undefined) return []
  const pairs = nearPairs(tree, tree, reach).filter(([i, j]) => i !== j)
  return inOrder(pairs.map(([i, j]): IndexPair => (i < j ? [i, j] : [j, i])))
}

/** The pairs of a box of the one list and a box of the other that come as near as `reach` (mm), in the order of the lists. */
export function nearBetween(a: readonly Box3[], b: readonly Box3[], reach: number): readonly IndexPair[] {
  const first = boxTree(a)
  const second = boxTree(b)
  return first === undefined || second === undefined ? [] : inOrder(nearPairs(first, second, reach))
}

type Node = { readonly box: Box3 } & (
  | { readonly kind: 'leaf'; readonly index: number }
  | { readonly kind: 'fork'; readonly nodes: readonly [Node, Node] }
)

/** A tree that halves its boxes by their middles along the axis in which these spread farthest. */
function boxTree(boxes: readonly Box3[]): Node | undefined {
  const middles = boxes.map(({ low, high }) => ({
    x: (low.x + high.x) / 2,
    y: (low.y + high.y) / 2,
    z: (low.z + high.z) / 2,
  }))
  const grow = (indices: readonly number[]): Node => {
    const [index] = indices
    if (indices.length === 1) return { kind: 'leaf', index: index!, box: boxes[index!]! }
    const spread = joinBoxes(indices.map(i => ({ low: middles[i]!, high: middles[i]! })))
    const wide = (axis: 'x' | 'y' | 'z') => spread.high[axis] - spread.low[axis]
    const axis = (['x', 'y', 'z'] as const).reduce((best, next) => (wide(next) > wide(best) ? next : best))
    const sorted = indices.toSorted((i, j) => middles[i]![axis] - middles[j]![axis] || i - j)
    const half = sorted.length >> 1
    const nodes = [grow(sorted.slice(0, half)), grow(sorted.slice(half))] as const
    return { kind: 'fork', nodes, box: joinBoxes(nodes.map(({ box }) => box)) }
  }
  return boxes.length === 0 ? undefined : grow(boxes.map((_, i) => i))
}

function nearPairs(a: Node, b: Node, reach: number): IndexPair[] {
  const found: IndexPair[] = []
  const visit = (p: Node, q: Node): void => {
    if (!areNear(p.box, q.box, reach)) return
    if (p.kind === 'leaf') {
      if (q.kind === 'leaf') found.push([p.index, q.index])
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

function inOrder(pairs: readonly IndexPair[]): readonly IndexPair[] {
  return pairs.toSorted(([a, b], [c, d]) => a - c || b - d)
}
