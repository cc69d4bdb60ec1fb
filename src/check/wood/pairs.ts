import { type Cut, shareDepth } from '../subject/cut.ts'

/**
 * The pairs of cuts whose boxes come as near to each other as `reach`, at the same depth in the wood, each once. The
 * cuts are swept from left to right, so that the time grows with the pairs that are near and not with all.
 */
export function nearPairs<C extends Cut>(
  cuts: readonly C[],
  reach: number,
): readonly (readonly [first: C, second: C])[] {
  const order = new Map(cuts.map((cut, i) => [cut, i]))
  const sorted = [...cuts].sort((a, b) => a.bounds.left - b.bounds.left || order.get(a)! - order.get(b)!)
  const pairs: (readonly [C, C])[] = []
  let open: C[] = []
  for (const cut of sorted) {
    open = open.filter(({ bounds }) => bounds.right + reach >= cut.bounds.left)
    for (const other of open) {
      const apart = Math.max(other.bounds.bottom - cut.bounds.top, cut.bounds.bottom - other.bounds.top)
      if (apart > reach || !shareDepth(cut, other)) continue
      pairs.push(order.get(other)! < order.get(cut)! ? [other, cut] : [cut, other])
    }
    open.push(cut)
  }
  return pairs.sort(([a, b], [c, d]) => order.get(a)! - order.get(c)! || order.get(b)! - order.get(d)!)
}
