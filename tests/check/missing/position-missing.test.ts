import { expect, test } from 'vitest'
import { positionMissing } from '../../../src/check/missing/position-missing.ts'
import { planWithCuts, written } from '../../model/model-of.ts'
import { found, only } from '../found.ts'

/** What is wanted is the two sides of each direction that has no distance. */
test.each([
  ['hole: pin, diameter: 4', 'hole', 'left or right, and one from bottom or top', 'front'],
  ['hole: pin, at: { left: 3 }, diameter: 4', 'hole', 'bottom or top', 'front'],
  ['hole: pin, at: { top: 3 }, diameter: 4', 'hole', 'left or right', 'front'],
  ['hole: pin, at: { left: unknown, top: 3 }, diameter: 4', 'hole', 'left or right', 'front'],
  ['hole: pin, on: top, at: { left: 3 }, diameter: 4', 'hole', 'front or back', 'top'],
  ['hole: pin, on: left, diameter: 4', 'hole', 'front or back, and one from bottom or top', 'left'],
  ['slot: mouth, at: { left: 3 }, size: 30 x 8', 'slot', 'bottom or top', 'front'],
  [
    'row: posts, at: { left: 3 }, toward: right, spacing: 9, count: 3, diameter: 4',
    'row',
    'bottom or top',
    'front',
  ],
  ['notch: step, on: top, size: 12 x 7', 'notch', 'left or right', 'top'],
  ['notch: step, on: left, size: 12 x 7', 'notch', 'bottom or top', 'left'],
])('{ %s } wants a distance', (cut, what, wanted, side) => {
  const text = planWithCuts([cut])
  const finding = only(positionMissing, text)
  expect(finding).toMatchObject({
    rule: 'position-missing',
    severity: 'error',
    facts: { what, wanted },
    places: [{ part: 'plank', feature: /: (\w+)/.exec(cut)![1], side }],
  })
  expect(written(text, finding.places[0]!.source!)).toContain(cut)
})

test.each([
  'hole: pin, at: center, diameter: 4',
  'hole: pin, at: { left: 3, bottom: center }, diameter: 4',
  'slot: mouth, at: { right: 3, top: 3 }, size: 30 x 8',
  'notch: step, on: bottom, at: { left: center }, size: 12 x 7',
  // its size is missing, which is another rule's business
  'hole: pin, at: center, diameter: unknown',
])('{ %s } has its place', cut => {
  expect(found(positionMissing, planWithCuts([cut]))).toEqual([])
})

test('a cut that is placed from one without a place wants the place of that one', () => {
  const text = planWithCuts([
    'hole: pivot, at: { left: 10 }, diameter: 4',
    'hole: stop, at: { from: pivot, right: 20 }, diameter: 4',
  ])
  expect(found(positionMissing, text).map(({ facts }) => facts.wanted)).toEqual([
    'bottom or top',
    'pivot, which has no place itself',
  ])
})
