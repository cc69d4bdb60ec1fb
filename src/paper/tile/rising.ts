/**
 * Counts along a list that never fall from one entry to the next, and never pass `most`: where both ends of a stretch
 * agree all between do, so that few are counted.
 */
export function risingCounts<T>(
  list: readonly T[],
  countOf: (entry: T) => number,
  most: number,
): readonly number[] {
  const counts = list.map(() => most)
  const between = (low: number, high: number): void => {
    if (high - low < 2) return
    if (counts[low] === counts[high]) {
      counts.fill(counts[low]!, low, high)
      return
    }
    const middle = (low + high) >> 1
    counts[middle] = countOf(list[middle]!)
    between(low, middle)
    between(middle, high)
  }
  if (list.length === 0) return counts
  counts[0] = countOf(list[0]!)
  if (counts[0] === most) return counts
  counts[list.length - 1] = countOf(list.at(-1)!)
  between(0, list.length - 1)
  return counts
}
