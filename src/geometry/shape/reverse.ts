import type { Contour } from './contour.ts'
import { arcOf, line, type Segment } from './segment.ts'

/** The same edge run the other way. */
export function reverseSegment(s: Segment): Segment {
  return s.kind === 'line'
    ? line(s.to, s.from, s.tag)
    : arcOf(s.to, s.from, s.centre, s.radius, s.turn === 1 ? -1 : 1, s.tag)
}

/** The same contour run the other way; its last edge comes first. Points stay shared. */
export function reverseContour(contour: Contour): Contour {
  return { segments: contour.segments.toReversed().map(reverseSegment), closed: contour.closed }
}
