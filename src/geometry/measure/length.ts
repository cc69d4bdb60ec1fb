import type { Contour } from '../shape/contour.ts'
import { distance } from '../shape/point.ts'
import { type Segment, sweep } from '../shape/segment.ts'

/** The length of an edge in millimetres, along the edge. */
export function segmentLength(s: Segment): number {
  return s.kind === 'line' ? distance(s.from, s.to) : s.radius * Math.abs(sweep(s))
}

/** The length of a path, or the perimeter of a closed contour, in millimetres. */
export function contourLength(contour: Contour): number {
  return contour.segments.reduce((sum, s) => sum + segmentLength(s), 0)
}
