import { orientation } from '../../number/predicates.ts'
import type { Point } from './point.ts'
import type { Arc } from './segment.ts'

/**
 * Whether the direction in which `p` lies from the arc's centre is one of those that the arc sweeps, both ends
 * included. How far `p` is from the centre does not matter. The signs that decide are exact for the points as
 * given.
 */
export function spans(a: Arc, p: Point): boolean {
  const [first, last] = a.turn === 1 ? [a.from, a.to] : [a.to, a.from]
  const ends = orientation(a.centre, first, last)
  const afterFirst = orientation(a.centre, first, p)
  const beforeLast = orientation(a.centre, p, last)
  if (ends > 0) return afterFirst >= 0 && beforeLast >= 0
  if (ends < 0) return afterFirst >= 0 || beforeLast >= 0
  return afterFirst >= 0
}
