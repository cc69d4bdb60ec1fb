/** A queue that gives the entry of the highest rank first. */
export type Heap<T> = {
  readonly add: (rank: number, value: T) => void
  readonly take: () => { readonly rank: number; readonly value: T } | undefined
}

export function heap<T>(): Heap<T> {
  const entries: { rank: number; value: T }[] = []
  const swap = (i: number, j: number) => {
    const kept = entries[i]!
    entries[i] = entries[j]!
    entries[j] = kept
  }
  return {
    add(rank, value) {
      let i = entries.push({ rank, value }) - 1
      while (i > 0) {
        const parent = (i - 1) >> 1
        if (entries[parent]!.rank >= entries[i]!.rank) break
        swap(i, parent)
        i = parent
      }
    },
    take() {
      const top = entries[0]
      const last = entries.pop()
      if (top === undefined || last === undefined || entries.length === 0) return top
      entries[0] = last
      let i = 0
      for (;;) {
        const left = 2 * i + 1
        if (left >= entries.length) break
        const right = left + 1
        const child = right < entries.length && entries[right]!.rank > entries[left]!.rank ? right : left
        if (entries[child]!.rank <= entries[i]!.rank) break
        swap(i, child)
        i = child
      }
      return top
    },
  }
}
