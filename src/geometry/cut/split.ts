import type { Point } from '../shape/point.ts'
import { type Segment, withEnds } from '../shape/segment.ts'

/** An edge cut at points of it, given in its order; the pieces share these points, and keep the edge's tag. */
export function splitAt(s: Segment, points: readonly Point[]): readonly Segment[] {
  const stops = [s.from, ...points, s.to]
  return stops.slice(1).map((to, k) => withEnds(s, stops[k]!, to))
}
