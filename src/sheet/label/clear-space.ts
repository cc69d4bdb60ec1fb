import { chordPoints } from '../../geometry/approximate/chords.ts'
import type { Bounds, Contour } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'

/** What text has to keep clear of: lines, as chords, and boxes of text that stand already. */
export type Obstacles = {
  readonly lines: readonly (readonly Point[])[]
  readonly boxes: readonly Bounds[]
}

/** Much less than the gap that is kept, so that chords for arcs let no text touch one. */
const chordDeviation = 0.02

/** The chords of contours, each a chain of points. */
export function asLines(contours: readonly Contour[]): readonly (readonly Point[])[] {
  return contours.map(contour => {
    const points = chordPoints(contour, chordDeviation)
    return contour.closed && points.length > 0 ? [...points, points[0]!] : points
  })
}

export function grown(box: Bounds, by: number): Bounds {
  return { left: box.left - by, bottom: box.bottom - by, right: box.right + by, top: box.top + by }
}

/** Whether a box touches no line and no other box. */
export function isClear(box: Bounds, { lines, boxes }: Obstacles): boolean {
  return !boxes.some(other => overlap(box, other)) && !lines.some(points => touches(box, points))
}

/** Whether a straight line from one point to another meets any line or box. */
export function isCrossed([a, b]: readonly [Point, Point], { lines, boxes }: Obstacles): boolean {
  if (boxes.some(box => crosses(box, a, b))) return true
  const turnsApart = (p: Point, q: Point, r: Point, s: Point): boolean => leftOf(p, q, r) !== leftOf(p, q, s)
  return lines.some(points =>
    points.some((q, i) => {
      const p = points[i - 1]
      return p !== undefined && turnsApart(a, b, p, q) && turnsApart(p, q, a, b)
    }),
  )
}

/** Lettering may be a hair off; nothing that is cut hangs on this sign. */
function leftOf(p: Point, q: Point, r: Point): boolean {
  return (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x) > 0
}

function overlap(a: Bounds, b: Bounds): boolean {
  return a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top
}

function touches(box: Bounds, points: readonly Point[]): boolean {
  for (let i = 1; i < points.length; i++) if (crosses(box, points[i - 1]!, points[i]!)) return true
  return false
}

/** Whether any of the stretch from `a` to `b` lies in the box: what is left of it after cutting at the four sides. */
function crosses(box: Bounds, a: Point, b: Point): boolean {
  let from = 0
  let to = 1
  const cut = (start: number, change: number, low: number, high: number): boolean => {
    if (change === 0) return start >= low && start <= high
    const first = (low - start) / change
    const second = (high - start) / change
    from = Math.max(from, Math.min(first, second))
    to = Math.min(to, Math.max(first, second))
    return from <= to
  }
  return cut(a.x, b.x - a.x, box.left, box.right) && cut(a.y, b.y - a.y, box.bottom, box.top)
}
