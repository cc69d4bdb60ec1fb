import { coincident } from '../number/tolerance.ts'

/** The sizes from the first to the last, both included where the steps lead there. */
export function steps(first: number, last: number, step: number): readonly number[] {
  const count = Math.floor((last - first) / step + coincident) + 1
  return Array.from({ length: count }, (_, i) => first + i * step)
}

/** Sizes together, ascending, each once. */
export function union(...sets: readonly (readonly number[])[]): readonly number[] {
  const sorted = sets.flat().sort((a, b) => a - b)
  return sorted.filter((size, i) => i === 0 || size - sorted[i - 1]! > coincident)
}

/** The size of an ascending set that is nearest to the one wanted, of two the smaller; none where the set is empty. */
export function nearestSize(set: readonly number[], wanted: number): number | undefined {
  let best: number | undefined
  for (const size of set) {
    if (best === undefined || Math.abs(size - wanted) < Math.abs(best - wanted)) best = size
  }
  return best
}

/** The smallest size of an ascending set that is not smaller than the one wanted; none beyond its largest. */
export function nextSize(set: readonly number[], wanted: number): number | undefined {
  return set.find(size => size >= wanted - coincident)
}
