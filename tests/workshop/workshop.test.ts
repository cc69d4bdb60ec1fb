import { expect, test } from 'vitest'
import { bitFor, has, pointLength } from '../../src/workshop/bits.ts'
import { defaultWorkshop, sandingAllowance } from '../../src/workshop/defaults.ts'
import { clearance, type Fit } from '../../src/workshop/fits.ts'
import { nearestSize, nextSize, steps, union } from '../../src/workshop/size-set.ts'

const inch = 25.4
const { bits, fits, kerf } = defaultWorkshop

test.each([
  // (D/2)·cot(A/2): 118° 0.30043·D, 135° 0.20711·D, by calculation
  [118, 0.30043],
  [135, 0.20711],
])('a twist drill of %d° ends in a point of %f diameters', (degrees, share) => {
  expect(pointLength({ ...bits, pointAngle: (degrees * Math.PI) / 180 }, 10)).toBeCloseTo(10 * share, 4)
})

test('the point of a brad is as long as its spur, a flat bit has none', () => {
  expect(pointLength({ ...bits, point: 'brad' }, 10)).toBe(inch / 16)
  expect(pointLength({ ...bits, point: 'flat' }, 10)).toBe(0)
})

test.each<[fit: Fit, pin: number, clearance: number]>([
  // common practice, no source
  ['turning', 3 / 16, 1 / 64],
  ['turning', 1 / 4, 1 / 64],
  ['turning', 5 / 16, 1 / 32],
  ['push', 1 / 4, 0],
  ['glue', 1 / 4, 0],
  ['easy', 1 / 4, 1 / 64],
])('a %s fit on a pin of %f in leaves %f in', (fit, pin, room) => {
  expect(clearance(fits, fit, pin * inch)).toBeCloseTo(room * inch, 12)
})

test('the kerfs lie within the shop tables: a full saw 0.125 in, a band saw 0.020 to 0.035 in', () => {
  expect(kerf.circular).toBe(0.125 * inch)
  expect(kerf.band).toBeGreaterThanOrEqual(0.02 * inch)
  expect(kerf.band).toBeLessThanOrEqual(0.035 * inch)
})

test('a hole is taken up to the next bit of the plan’s unit, and a bit that fits is taken as it is', () => {
  expect(bitFor(bits, (13 / 64) * inch, 'inch')).toBeCloseTo((13 / 64) * inch, 12)
  expect(bitFor(bits, 5, 'inch')).toBeCloseTo((13 / 64) * inch, 12)
  expect(bitFor(bits, 5.1, 'mm')).toBeCloseTo(5.5, 12)
  expect(bitFor(bits, 40, 'mm')).toBeUndefined()
  expect(bitFor({ ...bits, mm: [] }, 5, 'mm')).toBeCloseTo((13 / 64) * inch, 12)
})

test('the shop has a bit that is in either set', () => {
  expect([5, inch / 4, (5 / 64) * inch, 5.2, 0.089 * inch].map(size => has(bits, size))).toEqual([
    true,
    true,
    true,
    false,
    false,
  ])
})

test('the nearest and the next of a set', () => {
  const set = union(steps(1, 3, 0.5), [2, 8])
  expect(set).toEqual([1, 1.5, 2, 2.5, 3, 8])
  expect([0, 1.75, 5, 9].map(size => nearestSize(set, size))).toEqual([1, 1.5, 3, 8])
  expect([0, 1.75, 5, 9].map(size => nextSize(set, size))).toEqual([1, 2, 8, undefined])
  expect(nearestSize([], 1)).toBeUndefined()
})

test('a small part has the smaller sanding allowance', () => {
  // common practice, no source: 1/32 in on parts under 3 in, 1/16 in above
  expect(sandingAllowance(defaultWorkshop, 2.9 * inch, inch)).toBe(inch / 32)
  expect(sandingAllowance(defaultWorkshop, inch, 3 * inch)).toBe(inch / 16)
})
