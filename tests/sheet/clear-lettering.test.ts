import fc from 'fast-check'
import { expect, test } from 'vitest'
import { boundsOfMarks } from '../../src/drawing/mark-bounds.ts'
import { plansToMeasure } from '../trueness/plans.ts'
import { expectClear, meets } from './clear.ts'
import { randomBlock } from './random-block.ts'
import { randomPlan } from './random-plan.ts'
import { fonts, papersOf, sheetsOf } from './sheets-of.ts'

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

test('on the strips of any block no lettering touches other lettering, or any line', () => {
  fc.assert(
    fc.property(randomBlock, text => {
      for (const { drawings } of papersOf(text, 'strip')) for (const { marks } of drawings) expectClear(marks)
    }),
    { numRuns: 300 },
  )
})

test('nor on a strip for both ends whose distances have letters over them', () => {
  const text = `paperjig: 1
title: Pier block
units: inch
parts:
  block:
    make: 4
    mirrored: true
    size: 20 mm x 12 mm x 12 mm
    cuts:
      - { hole: a, on: left, at: { front: 1 mm, bottom: center }, diameter: 1.5 mm }
      - { hole: b, on: right, at: { back: 1 mm, bottom: center }, diameter: 3 mm }
`
  const strips = papersOf(text, 'strip')
  expect(strips).not.toEqual([])
  for (const { drawings } of strips) for (const { marks } of drawings) expectClear(marks)
})

test.each(plansToMeasure())('on the strips of $name no lettering touches anything', ({ text }) => {
  for (const { drawings } of papersOf(text, 'strip')) for (const { marks } of drawings) expectClear(marks)
})

test('on the wraps of any block no lettering touches other lettering, or any line', () => {
  fc.assert(
    fc.property(randomBlock, text => {
      for (const { drawings } of papersOf(text, 'wrap')) for (const { marks } of drawings) expectClear(marks)
    }),
    { numRuns: 150 },
  )
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
