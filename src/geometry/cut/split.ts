import { pointAt } from '../measure/along.ts'
import type { Point } from '../shape/point.ts'
import { type Segment, withEnds } from '../shape/segment.ts'

/** An edge cut at points of it, given in its order; the pieces share these points, and keep the edge's tag. */
export function splitAt(s: Segment, points: readonly Point[]): readonly Segment[] {
  const stops = [s.from, ...points, s.to]
  return stops.slice(1).map((to, k) => withEnds(s, stops[k]!, to))
}

/** An edge in so many pieces of one length, as {@link splitAt} makes them. */
export function splitEvenly(s: Segment, count: number): readonly Segment[] {
  if (count <= 1) return [s]
  return splitAt(
    s,
    Array.from({ length: count - 1 }, (_, i) => pointAt(s, (i + 1) / count)),
  )
}
