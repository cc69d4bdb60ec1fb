import type { Mark } from '../../src/drawing/mark.ts'
import { textBox } from '../../src/drawing/text-box.ts'
import { chordContour } from '../../src/geometry/approximate/chords.ts'
import type { Bounds } from '../../src/geometry/shape/contour.ts'
import type { Point } from '../../src/geometry/shape/point.ts'
import { plain } from '../../src/text/words.ts'
import { apart } from '../drawing/ink-box.ts'
import { fonts, textsOf } from './sheets-of.ts'

/** Whether a straight stretch has a point in a box: no side of the box and no line along the stretch parts the two. */
export function meets(box: Bounds, a: Point, b: Point): boolean {
  if (Math.max(a.x, b.x) < box.left || Math.min(a.x, b.x) > box.right) return false
  if (Math.max(a.y, b.y) < box.bottom || Math.min(a.y, b.y) > box.top) return false
  const across = (x: number, y: number) => (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x)
  const signs = [
    across(box.left, box.bottom),
    across(box.right, box.bottom),
    across(box.left, box.top),
    across(box.right, box.top),
  ]
  return Math.min(...signs) <= 0 && Math.max(...signs) >= 0
}

/** Every line that is drawn: outlines, rings and crosses, leaders, hatching, arrows, face marks. */
const linesOf = (marks: readonly Mark[]) =>
  marks
    .flatMap(m => (m.kind === 'path' ? m.contours : m.kind === 'fill' ? m.regions.map(r => r.outer) : []))
    .flatMap(c => chordContour(c, 0.001).segments)

/** @throws Error when lettering touches other lettering or any line */
export function expectClear(marks: readonly Mark[]): void {
  const boxes = textsOf(marks).map(t => ({ box: textBox(fonts, t), says: plain(t.words) }))
  const lines = linesOf(marks)
  boxes.forEach(({ box, says }, i) => {
    for (const other of boxes.slice(i + 1)) {
      if (!apart(box, other.box, 0)) throw new Error(`"${says}" touches "${other.says}"`)
    }
    for (const { from, to } of lines) {
      if (meets(box, from, to)) throw new Error(`a line runs through "${says}"`)
    }
  })
}
