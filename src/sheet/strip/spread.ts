/** Something on a line that wants to stand with its middle at a place, and how much of the line it takes. */
export type Wanted = { readonly at: number; readonly width: number }

/** Things that stand side by side, and the sum of where each would have the whole line begin. */
type Cluster = { readonly count: number; readonly sum: number }

/** Where things may stand, from one end or both ends on. */
export type Stretch = { readonly from: number; readonly to: number }

/**
 * Middles along a line so that nothing overlaps, in the same order, and the squares of how far they are moved add up
 * to the least. What is wanted is given in ascending order.
 *
 * Source: isotonic regression by pooling neighbours (Ayer, Brunk, Ewing, Reid, Silverman, 1955), from memory.
 */
export function spread(wanted: readonly Wanted[], { from, to }: Stretch): readonly number[] {
  const clusters: Cluster[] = []
  let before = 0
  for (const { at, width } of wanted) {
    // where the first of all would begin if everything up to this one stood side by side
    let last: Cluster = { count: 1, sum: at - width / 2 - before }
    before += width
    for (let known = clusters.at(-1); known !== undefined; known = clusters.at(-1)) {
      if (start(known) <= start(last)) break
      clusters.pop()
      last = { count: known.count + last.count, sum: known.sum + last.sum }
    }
    clusters.push(last)
  }
  const middles: number[] = []
  let reached = 0
  for (const cluster of clusters) {
    // the best within bounds is the best without them, moved to the nearest bound
    const begins = Math.max(from, Math.min(start(cluster), to - before))
    for (let i = 0; i < cluster.count; i++) {
      const { width } = wanted[middles.length]!
      middles.push(begins + reached + width / 2)
      reached += width
    }
  }
  return middles
}

function start({ sum, count }: Cluster): number {
  return sum / count
}
