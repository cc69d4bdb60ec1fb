import fc from 'fast-check'
import { expect, test } from 'vitest'
import { boundsOfMarks } from '../../../src/drawing/mark-bounds.ts'
import { plansToMeasure } from '../../trueness/plans.ts'
import { expectClear } from '../clear.ts'
import { randomPlan } from '../random-plan.ts'
import { everyDrawing, fonts, markOutsOf } from '../sheets-of.ts'

test('on the mark-out of any part no lettering touches other lettering, or any line', () => {
  const projection = fc.constantFrom('third' as const, 'first' as const)
  const sheet = fc.constantFrom('mark-out', 'mark-out', 'mark-out, reduced 1:2', 'mark-out, reduced 1:10')
  fc.assert(
    fc.property(randomPlan, projection, sheet, (text, projection, sheet) => {
      for (const markOut of markOutsOf(text, model => ({ ...model, projection })))
        for (const drawing of everyDrawing(markOut))
          if (drawing.caption.sheet === sheet) expectClear(drawing.marks)
    }),
    { numRuns: 500 },
  )
})

test.each(plansToMeasure())('on the mark-outs of $name no lettering touches anything', ({ text }) => {
  for (const sheet of markOutsOf(text)) for (const { marks } of everyDrawing(sheet)) expectClear(marks)
})

test('everything on the mark-out of any part lies within the drawing’s bounds', () => {
  fc.assert(
    fc.property(randomPlan, text => {
      for (const sheet of markOutsOf(text)) {
        for (const { marks, bounds } of everyDrawing(sheet).slice(0, 5)) {
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
