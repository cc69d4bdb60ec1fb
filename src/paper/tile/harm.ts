/** A stretch that a seam spares, and how bad it is if none can; the ends of the stretch are allowed. */
export type Spared = { readonly low: number; readonly high: number; readonly harm: number }

/** What a seam costs by where it runs: the harms of all stretches that it lies within, together. */
export function harmsOf(spared: readonly Spared[]): (at: number) => number {
  // a position lies within the stretches that began before it, less those that have ended
  const begun = sums(spared.map(({ low, harm }) => ({ at: low, harm })))
  const ended = sums(spared.map(({ high, harm }) => ({ at: high, harm })))
  return at => begun(before => before < at) - ended(before => before <= at)
}

/** Harms in the order of their places, added up: what those come to that stand before a place, as `isBefore` has it. */
function sums(
  list: readonly { readonly at: number; readonly harm: number }[],
): (isBefore: (at: number) => boolean) => number {
  const sorted = list.toSorted((a, b) => a.at - b.at)
  const totals = [0]
  for (const { harm } of sorted) totals.push(totals.at(-1)! + harm)
  return isBefore => {
    let [from, to] = [0, sorted.length]
    while (from < to) {
      const middle = (from + to) >> 1
      if (isBefore(sorted[middle]!.at)) from = middle + 1
      else to = middle
    }
    return totals[from]!
  }
}
