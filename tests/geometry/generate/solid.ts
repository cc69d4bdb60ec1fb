import type { Contour, Region } from '../../../src/geometry/shape/contour.ts'
import type { Segment } from '../../../src/geometry/shape/segment.ts'

/** A closed contour of segments that each begin where the one before ends. */
export function closed(segments: readonly Segment[]): Contour {
  return { segments, closed: true }
}

/** What a contour encloses, without holes. */
export function solid(outer: Contour): Region {
  return { outer, holes: [] }
}
