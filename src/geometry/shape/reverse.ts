import type { Contour } from './contour.ts'
import type { Segment } from './segment.ts'

/** The same edge run the other way. */
export function reverseSegment(s: Segment): Segment {
  if (s.kind === 'line') return { ...s, from: s.to, to: s.from }
  return { ...s, from: s.to, to: s.from, turn: s.turn === 1 ? -1 : 1 }
}

/** The same contour run the other way; its last edge comes first. Points stay shared. */
export function reverseContour(contour: Contour): Contour {
  return { segments: contour.segments.toReversed().map(reverseSegment), closed: contour.closed }
}
