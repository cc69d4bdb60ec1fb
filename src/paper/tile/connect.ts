/**
 * The tiles to print so that all that are wanted hang together: those wanted and, where an island of them would lie
 * loose, the fewest blank ones that lead to it. Without them nobody could lay the island in its place.
 *
 * @param neighbours for every tile the ones that share a seam with it
 */
export function connected(
  wanted: ReadonlySet<number>,
  neighbours: readonly (readonly number[])[],
): ReadonlySet<number> {
  const kept = new Set<number>()
  const [first] = wanted
  if (first === undefined) return kept
  let way: readonly number[] | undefined = [first]
  while (way !== undefined) {
    for (const tile of way) flood(tile, wanted, neighbours, kept)
    way = shortestWay(kept, tile => wanted.has(tile) && !kept.has(tile), neighbours)
  }
  // an island that nothing leads to is printed all the same
  return new Set([...kept, ...wanted])
}

function flood(
  start: number,
  wanted: ReadonlySet<number>,
  neighbours: readonly (readonly number[])[],
  kept: Set<number>,
): void {
  const open = [start]
  for (let tile = open.pop(); tile !== undefined; tile = open.pop()) {
    kept.add(tile)
    for (const next of neighbours[tile]!) if (wanted.has(next) && !kept.has(next)) open.push(next)
  }
}

/** The tiles between what is kept and the nearest tile that is sought, that one included. */
function shortestWay(
  from: ReadonlySet<number>,
  isSought: (tile: number) => boolean,
  neighbours: readonly (readonly number[])[],
): readonly number[] | undefined {
  const cameFrom = new Map<number, number | undefined>([...from].map(tile => [tile, undefined]))
  const queue = [...from]
  for (const tile of queue) {
    if (isSought(tile)) {
      const way: number[] = []
      for (let at: number | undefined = tile; at !== undefined && !from.has(at); at = cameFrom.get(at))
        way.push(at)
      return way
    }
    for (const next of neighbours[tile]!) {
      if (cameFrom.has(next)) continue
      cameFrom.set(next, tile)
      queue.push(next)
    }
  }
  return undefined
}
