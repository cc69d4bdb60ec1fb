/** A stretch of a line, in millimetres. */
export type Stretch = { readonly from: number; readonly to: number }

/**
 * Moves things that want to stand at places along a line just so far apart that none touches the next. They keep their
 * order, and the squares of how far each is moved have the least sum. Takes time in step with their number.
 *
 * Pool adjacent violators: with the room that comes before it taken off, a thing's place may not be left of its
 * neighbour's; where it is, the two stand as one block at the mean of what they want. Source: Ayer et al., An empirical
 * distribution function for sampling with incomplete information, 1955, from memory.
 *
 * @param wanted places in ascending order, millimetres
 * @param sizes how much of the line each takes, its white included
 * @param within where they have to stay; on a line that is too short they reach out of it at its end
 * @returns where the middles of the things are, in the same order
 */
export function spread(
  wanted: readonly number[],
  sizes: readonly number[],
  within: Stretch = { from: -Infinity, to: Infinity },
): readonly number[] {
  const before: number[] = []
  for (let i = 0; i < wanted.length; i++)
    before.push(i === 0 ? 0 : before[i - 1]! + (sizes[i - 1]! + sizes[i]!) / 2)
  const blocks: { sum: number; count: number }[] = []
  for (let i = 0; i < wanted.length; i++) {
    let block = { sum: wanted[i]! - before[i]!, count: 1 }
    for (let last = blocks.at(-1); last !== undefined && mean(last) > mean(block); last = blocks.at(-1)) {
      blocks.pop()
      block = { sum: last.sum + block.sum, count: last.count + block.count }
    }
    blocks.push(block)
  }
  const places = blocks.flatMap(block => Array.from({ length: block.count }, () => mean(block)))
  // the best within bounds is the best without them, moved to the nearest bound
  const least = within.from + (sizes[0] ?? 0) / 2
  const most = within.to - (sizes.at(-1) ?? 0) / 2 - (before.at(-1) ?? 0)
  return places.map((place, i) => Math.max(least, Math.min(place, most)) + before[i]!)
}

function mean({ sum, count }: { readonly sum: number; readonly count: number }): number {
  return sum / count
}
