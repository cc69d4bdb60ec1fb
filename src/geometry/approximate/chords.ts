import type { Contour } from '../shape/contour.ts'
import type { Point } from '../shape/point.ts'
import { type Arc, line, type Segment, startAngle, sweep } from '../shape/segment.ts'

/** A coarser polygon than a square would no longer go round a circle. */
const widestStep = Math.PI / 2

/** More chords of one arc than this are a mistake in the call: a circle of 10 m within 1e-7 mm has fewer. */
const mostChords = 1_000_000

/**
 * The ends of chords that stand for an arc, from its `from` to its `to`, both as they are. All lie on the arc,
 * so the chords run inside its circle, nowhere farther from it than `maxDeviation` (millimetres).
 *
 * @throws RangeError when `maxDeviation` is not positive or asks for more than a million chords
 */
export function arcChords(a: Arc, maxDeviation: number): readonly Point[] {
  if (!(maxDeviation > 0)) throw new RangeError('a deviation is more than nothing')
  const angle = sweep(a)
  // the height of a chord's segment is 2r·sin²(step/4)
  const step = Math.min(widestStep, 4 * Math.asin(Math.min(1, Math.sqrt(maxDeviation / (2 * a.radius)))))
  const count = Math.max(1, Math.ceil(Math.abs(angle) / step))
  if (!(count <= mostChords)) throw new RangeError(`an arc of ${count} chords is too fine`)
  const start = startAngle(a)
  const points: Point[] = [a.from]
  for (let i = 1; i < count; i++) {
    const at = start + (angle * i) / count
    points.push({ x: a.centre.x + a.radius * Math.cos(at), y: a.centre.y + a.radius * Math.sin(at) })
  }
  points.push(a.to)
  return points
}

/**
 * The contour with every arc replaced by chords within `maxDeviation` (millimetres) of it. Lines stay as they
 * are, tags are kept, points stay shared.
 *
 * @throws RangeError as {@link arcChords}
 */
export function chordContour(contour: Contour, maxDeviation: number): Contour {
  const segments = contour.segments.flatMap((s): readonly Segment[] => {
    if (s.kind === 'line') return [s]
    const points = arcChords(s, maxDeviation)
    return points.slice(1).map((to, i) => line(points[i]!, to, s.tag))
  })
  return { segments, closed: contour.closed }
}

/**
 * The corners of {@link chordContour}: every point once, so a closed contour's first is not repeated at its
 * end.
 *
 * @throws RangeError as {@link arcChords}
 */
export function chordPoints(contour: Contour, maxDeviation: number): readonly Point[] {
  const { segments, closed } = chordContour(contour, maxDeviation)
  const starts = segments.map(s => s.from)
  const last = segments.at(-1)
  return closed || last === undefined ? starts : [...starts, last.to]
}
