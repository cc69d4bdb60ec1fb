import { orientation } from '../../number/predicates.ts'
import type { Point } from '../shape/point.ts'

/**
 * The corners of the smallest convex polygon around some points, counter-clockwise from the leftmost (of
 * several, the lowest). No three are in one line: the signs are exact. One point or two, when that is all.
 *
 * Source: Andrew's monotone chain, 1979.
 */
export function hullPoints(points: readonly Point[]): readonly Point[] {
  const sorted = points.toSorted((a, b) => a.x - b.x || a.y - b.y)
  const distinct = sorted.filter((p, i) => i === 0 || p.x !== sorted[i - 1]!.x || p.y !== sorted[i - 1]!.y)
  if (distinct.length < 3) return distinct
  const lower = chain(distinct)
  const upper = chain(distinct.toReversed())
  return [...lower.slice(0, -1), ...upper.slice(0, -1)]
}

/** Of points in order, those that a string pulled tight on the right touches. */
function chain(points: readonly Point[]): readonly Point[] {
  const kept: Point[] = []
  for (const p of points) {
    while (kept.length >= 2 && orientation(kept.at(-2)!, kept.at(-1)!, p) <= 0) kept.pop()
    kept.push(p)
  }
  return kept
}
