/** Numbers from 0 up to 1, the same for the same seed. Source: mulberry32, T. Ettinger, public domain (from memory). */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = state
    t = Math.imul(t ^ (t >>> 15), t | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

/** A whole number from `low` to `high`, both included. */
export function whole(random: () => number, low: number, high: number): number {
  return low + Math.floor(random() * (high - low + 1))
}

export function pick<T>(random: () => number, from: readonly T[]): T {
  return from[Math.floor(random() * from.length)]!
}
