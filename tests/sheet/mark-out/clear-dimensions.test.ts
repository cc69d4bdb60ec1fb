import fc from 'fast-check'
import { expect, test } from 'vitest'
import { boundsOfMarks } from '../../../src/drawing/mark-bounds.ts'
import { plansToMeasure } from '../../trueness/plans.ts'
import { expectClear } from '../clear.ts'
import { randomBlock } from '../random-block.ts'
import { randomPlan } from '../random-plan.ts'
import { everyDrawing, fonts, markOutsOf } from '../sheets-of.ts'

test('on the mark-out of any part no lettering touches other lettering, or any line', () => {
  const projection = fc.constantFrom('third' as const, 'first' as const)
  const sheet = fc.constantFrom('mark-out', 'mark-out', 'mark-out, reduced 1:2', 'mark-out, reduced 1:10')
  // there are many arrangements of the same views; each part is looked at in some of them
  const every = 8
  const from = fc.nat(every - 1)
  fc.assert(
    fc.property(randomPlan, projection, sheet, from, (text, projection, sheet, from) => {
      for (const markOut of markOutsOf(text, model => ({ ...model, projection }))) {
        const drawings = everyDrawing(markOut).filter(({ caption }) => caption.sheet === sheet)
        for (let i = from; i < drawings.length; i += every) expectClear(drawings[i]!.marks)
      }
    }),
    { numRuns: 500 },
  )
})

test('nor on that of any block with rows on all its faces', () => {
  fc.assert(
    fc.property(randomBlock, text => {
      for (const sheet of markOutsOf(text))
        for (const drawing of everyDrawing(sheet).slice(0, 8)) expectClear(drawing.marks)
    }),
    { numRuns: 100 },
  )
})

/** Everything that can be worked into wood, some of it leaning, stopped or eased. */
const worked = `paperjig: 1
title: Pier rail
units: mm
parts:
  rail:
    size: 150 x 50 x 24
    cuts:
      - { groove: panel, at: { bottom: 20 }, width: 8, depth: 6 }
      - { rebate: lip, on: front, edge: top, size: 8 x 10 }
      - { bevel: nose, on: right, angle: 20, short: front }
      - { chamfer: ease, on: front, edges: bottom, size: 3 }
      - { round-over: brow, on: back, edges: top, radius: 5 }
      - { engrave: name, text: PIER 7, at: { left: 50, bottom: 31 }, height: 7 }
      - { hole: pin, at: { left: 12, bottom: 10 }, diameter: 5, lean: { toward: right, angle: 15 } }
      - { hole: screw, at: { left: 30, bottom: 10 }, diameter: 4, counterbore: 9 x 4 }
      - { hole: sunk, on: left, at: center, diameter: 4, depth: 20, countersink: { diameter: 9, angle: 90 } }
      - { groove: dado, on: back, at: { left: 40 }, width: 10, depth: 5, stopped: { top: 12 } }
`

test('nor on that of a part with every kind of cut', () => {
  for (const sheet of markOutsOf(worked))
    for (const drawing of everyDrawing(sheet)) expectClear(drawing.marks)
})

test.each([
  ['8 x 8 x 2', '7.4 x 8'],
  ['300 x 4.98 x 2', '7.4 x 4.98'],
])('nor on that of a part of %s with a notch of %s that takes all of its reference end', (size, notch) => {
  const text = `paperjig: 1
title: Pier rail
units: mm
parts:
  rail:
    make: 2
    mirrored: true
    size: ${size}
    cuts:
      - { notch: end, on: bottom, at: { left: 0 }, size: ${notch} }
`
  for (const sheet of markOutsOf(text)) for (const drawing of everyDrawing(sheet)) expectClear(drawing.marks)
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
