import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Mark } from '../../src/drawing/mark.ts'
import { boundsOfMarks } from '../../src/drawing/mark-bounds.ts'
import { textBox } from '../../src/drawing/text-box.ts'
import { chordContour } from '../../src/geometry/approximate/chords.ts'
import type { Bounds } from '../../src/geometry/shape/contour.ts'
import type { Point } from '../../src/geometry/shape/point.ts'
import { plain } from '../../src/text/words.ts'
import { apart } from '../drawing/ink-box.ts'
import { plansToMeasure } from '../trueness/plans.ts'
import { randomPlan } from './random-plan.ts'
import { fonts, sheetsOf, textsOf } from './sheets-of.ts'

/** Whether a straight stretch has a point in a box: no side of the box and no line along the stretch parts the two. */
function meets(box: Bounds, a: Point, b: Point): boolean {
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

function expectClear(marks: readonly Mark[]): void {
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

test('on the templates of any part no lettering touches other lettering, or any line', () => {
  fc.assert(
    fc.property(randomPlan, text => {
      for (const { drawings } of sheetsOf(text)) for (const { marks } of drawings) expectClear(marks)
    }),
    { numRuns: 500 },
  )
})

test.each(plansToMeasure())('on the templates of $name no lettering touches anything', ({ text }) => {
  for (const { drawings } of sheetsOf(text)) for (const { marks } of drawings) expectClear(marks)
})

test('everything on the template of any part lies within the drawing’s bounds', () => {
  fc.assert(
    fc.property(randomPlan, text => {
      for (const { drawings } of sheetsOf(text)) {
        for (const { marks, bounds } of drawings) {
          for (const mark of marks) {
            const box = boundsOfMarks(fonts, [mark])
            expect(box.left).toBeGreaterThanOrEqual(bounds.left)
            expect(box.right).toBeLessThanOrEqual(bounds.right)
            expect(box.bottom).toBeGreaterThanOrEqual(bounds.bottom)
            expect(box.top).toBeLessThanOrEqual(bounds.top)
          }
        }
      }
    }),
    { numRuns: 50 },
  )
})

test('the comparison sees a line that only grazes a word', () => {
  const box = { left: 0, right: 10, bottom: 0, top: 3 }
  expect(meets(box, { x: -5, y: -4 }, { x: 5, y: 4 })).toBe(true)
  expect(meets(box, { x: -5, y: 1 }, { x: 5, y: 9 })).toBe(false)
  expect(meets(box, { x: -5, y: 3 }, { x: 15, y: 3 })).toBe(true)
  expect(meets(box, { x: 11, y: -5 }, { x: 11, y: 5 })).toBe(false)
})
