import { expect, test } from 'vitest'
import { tipLength, tipOf } from '../../../src/model/bore/tip.ts'
import { radians } from '../../../src/number/degrees.ts'
import { defaultWorkshop } from '../../../src/workshop/defaults.ts'
import { boreWith } from './bores.ts'

const { bits } = defaultWorkshop

/** Source: the height of a cone, (D/2)·cot(A/2): 0.30043 of the diameter at 118°, 0.20711 at 135°, 1/2 at 90°. */
test.each([
  ['bit: twist', 3.0043],
  ['bit: { point: twist, angle: 118 }', 3.0043],
  ['bit: { point: twist, angle: 135 }', 2.0711],
  ['bit: { point: twist, angle: 90 }', 5],
  ['bit: flat', 0],
  // common practice, no source: the spur of a small brad point is about 1/16 in
  ['bit: brad', 25.4 / 16],
])('the point of a 10 mm hole with { %s } goes %d mm deeper', (bit, deeper) => {
  expect(tipLength(boreWith(`diameter: 10, depth: 12, ${bit}`), bits)).toBeCloseTo(deeper, 3)
})

test('a hole that does not say what its bit ends in is bored with a bit of the shop', () => {
  const bore = boreWith('diameter: 10, depth: 12')
  expect(tipLength(bore, bits)).toBeCloseTo(3.0043, 4)
  expect(tipLength(bore, { ...bits, point: 'flat' })).toBe(0)
  expect(tipLength(bore, { ...bits, point: 'brad', spur: 2 })).toBe(2)
})

test('a twist drill without an angle has that of the shop, though the shop bores with another kind', () => {
  const bore = boreWith('diameter: 10, depth: 12, bit: twist')
  expect(tipOf(bore, { point: 'brad', pointAngle: radians(135), spur: 1 })).toMatchObject({
    point: 'twist',
    pointAngle: radians(135),
  })
})
