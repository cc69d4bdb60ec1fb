/** The worst finding of a group, and how many there are of it. */
export type Worst<T> = { readonly worst: T; readonly count: number }

/**
 * One for each key, in the order in which the keys come first: a row of twenty holes that stand too near to an edge is
 * one thing to say.
 */
export function worstOfEach<T>(
  found: readonly T[],
  key: (item: T) => string,
  badness: (item: T) => number,
): readonly Worst<T>[] {
  const groups = new Map<string, { worst: T; count: number }>()
  for (const item of found) {
    const group = groups.get(key(item))
    if (group === undefined) groups.set(key(item), { worst: item, count: 1 })
    else {
      group.count += 1
      if (badness(item) > badness(group.worst)) group.worst = item
    }
  }
  return [...groups.values()]
}
