import fc from 'fast-check'
import { expect, test } from 'vitest'
import { boundsOfMarks } from '../../../src/drawing/mark-bounds.ts'
import { plansToMeasure } from '../../trueness/plans.ts'
import { expectClear } from '../clear.ts'
import { randomPlan } from '../random-plan.ts'
import { everyDrawing, fonts, markOutsOf } from '../sheets-of.ts'

/** The first of these are what is printed nearly always; the smaller ones have the same lettering on smaller views. */
const looked = [0, 1, 2, 3, 4, 6] as const

test('on the mark-out of any part no lettering touches other lettering, or any line', () => {
  fc.assert(
    fc.property(randomPlan, fc.constantFrom('third' as const, 'first' as const), (text, projection) => {
      for (const sheet of markOutsOf(text, model => ({ ...model, projection }))) {
        const drawings = everyDrawing(sheet)
        for (const i of looked) if (drawings[i] !== undefined) expectClear(drawings[i].marks)
      }
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
