import { expect, test } from 'vitest'
import { measuredDiffers } from '../../../src/check/shop/measured-differs.ts'
import { defaultWorkshop } from '../../../src/workshop/defaults.ts'
import { planOf } from '../../model/model-of.ts'
import { found, only } from '../found.ts'

const block = (size: string, measured: string) => planOf(`    measured: ${measured}\n`, size)

/** Sanding takes 1/32 in (0.79375 mm) off parts under 3 in and 1/16 in (1.5875 mm) above: common practice, no source. */
test.each<[size: string, measured: string, direction: string, difference: number, allowed: number]>([
  ['100 x 40 x 20', '101.6 x 40 x 20', 'length', 1.6, 1.5875],
  ['100 x 40 x 20', '98.4 x 40 x 20', 'length', -1.6, 1.5875],
  ['100 x 40 x 20', '100 x 38 x 20', 'width', -2, 1.5875],
  ['60 x 40 x 20', '60 x 40.8 x 20', 'width', 0.8, 0.79375],
  ['100 x 40 x 20', '100 x 40 x 22', 'thickness', 2, 1.5875],
  // a tenth of the thickness
  ['100 x 40 x 3', '100 x 40 x 3.5', 'thickness', 0.5, 0.3],
])('%s that measures %s is off in its %s', (size, measured, direction, difference, allowed) => {
  const finding = only(measuredDiffers, block(size, measured))
  expect(finding).toMatchObject({ severity: 'warning', facts: { direction } })
  expect(finding.measured!.value - finding.limit!.value).toBeCloseTo(difference, 9)
  expect(finding.facts.difference.value).toBeCloseTo(difference, 9)
  expect(finding.facts.allowed.value).toBeCloseTo(allowed, 9)
})

test.each([
  ['100 x 40 x 20', '100 x 40 x 20'],
  ['100 x 40 x 20', '101.5 x 38.5 x 18.5'],
  ['60 x 40 x 20', '59.3 x 40.7 x 20'],
  ['100 x 40 x 3', '100 x 40 x 2.7'],
])('%s that measures %s is as measuring is', (size, measured) => {
  expect(found(measuredDiffers, block(size, measured))).toEqual([])
})

test('length and width exchanged are off both', () => {
  const directions = found(measuredDiffers, block('100 x 40 x 20', '40 x 100 x 20')).map(
    f => f.facts.direction,
  )
  expect(directions).toEqual(['length', 'width'])
})

test('a part that was not measured, or whose measure is not known, is not asked', () => {
  expect(found(measuredDiffers, planOf(''))).toEqual([])
  expect(found(measuredDiffers, block('100 x 40 x 20', '90 x unknown x 20'))).toEqual([])
})

test('a shop that sands more off lets more pass', () => {
  const sanding = { ...defaultWorkshop.sanding, large: 3 }
  expect(
    found(measuredDiffers, block('100 x 40 x 20', '102.9 x 40 x 20'), { ...defaultWorkshop, sanding }),
  ).toEqual([])
})
