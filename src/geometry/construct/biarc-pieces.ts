import type { Segment } from '../shape/segment.ts'

/**
 * Cuts a run of steps 0…`last` into pieces, each as long as it may be, and then, with as few pieces, so that
 * the worst deviation is as small as may be: without that the last piece is whatever was left over.
 *
 * `piece(i, j, deviation)` gives the edges from step i to step j, or `undefined` when they deviate by more.
 * The result is `undefined` when even a single step does.
 */
export function evenPieces(
  last: number,
  maxDeviation: number,
  piece: (i: number, j: number, deviation: number) => readonly Segment[] | undefined,
): readonly (readonly Segment[])[] | undefined {
  let best = longestPieces(last, maxDeviation, piece)
  if (best === undefined) return undefined
  let low = 0
  let high = maxDeviation
  for (let i = 0; i < evenings; i++) {
    const middle = (low + high) / 2
    const tried = longestPieces(last, middle, piece)
    if (tried !== undefined && tried.length <= best.length) {
      best = tried
      high = middle
    } else low = middle
  }
  return best
}

/** Each halves what is left to gain: after six it is under two per cent of the deviation allowed. */
const evenings = 6

function longestPieces(
  last: number,
  deviation: number,
  piece: (i: number, j: number, deviation: number) => readonly Segment[] | undefined,
): readonly (readonly Segment[])[] | undefined {
  const pieces: (readonly Segment[])[] = []
  for (let at = 0; at < last; ) {
    let reach = at + 1
    let found = piece(at, reach, deviation)
    if (found === undefined) return undefined
    // twice as far as long as that will do, then halving what is between
    let beyond = last + 1
    for (let step = 2; reach < last && beyond > last; step *= 2) {
      const next = Math.min(at + step, last)
      const longer = piece(at, next, deviation)
      if (longer === undefined) beyond = next
      else {
        found = longer
        reach = next
      }
    }
    while (beyond <= last && beyond - reach > 1) {
      const middle = (reach + beyond) >> 1
      const longer = piece(at, middle, deviation)
      if (longer === undefined) beyond = middle
      else {
        found = longer
        reach = middle
      }
    }
    pieces.push(found)
    at = reach
  }
  return pieces
}
