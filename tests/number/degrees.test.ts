import fc from 'fast-check'
import { expect, test } from 'vitest'
import { cosDegrees, degrees, radians, sinDegrees, tanDegrees } from '../../src/number/degrees.ts'

/** Source: definition. */
test.each([
  [0, 0, 1],
  [30, 0.5, Math.sqrt(3) / 2],
  [60, Math.sqrt(3) / 2, 0.5],
  [90, 1, 0],
  [150, 0.5, -Math.sqrt(3) / 2],
  [180, 0, -1],
  [210, -0.5, -Math.sqrt(3) / 2],
  [270, -1, 0],
  [330, -0.5, Math.sqrt(3) / 2],
  [360, 0, 1],
  [-90, -1, 0],
  [720 + 30, 0.5, Math.sqrt(3) / 2],
])('the sine of %d° is %d and the cosine %d', (angle, sine, cosine) => {
  expect(Math.abs(sinDegrees(angle) - sine)).toBeLessThan(2e-16)
  expect(Math.abs(cosDegrees(angle) - cosine)).toBeLessThan(2e-16)
  for (const exact of [0, 0.5, 1]) {
    if (Math.abs(sine) === exact) expect(Math.abs(sinDegrees(angle))).toBe(exact)
    if (Math.abs(cosine) === exact) expect(Math.abs(cosDegrees(angle))).toBe(exact)
  }
})

test('the tangent is exactly ±1 at odd multiples of 45° and infinite at 90°', () => {
  expect([45, 135, 225, -45].map(tanDegrees)).toEqual([1, -1, 1, -1])
  expect(Math.abs(tanDegrees(90))).toBe(Number.POSITIVE_INFINITY)
})

test('everywhere they agree with the functions of radians', () => {
  fc.assert(
    fc.property(fc.double({ min: -720, max: 720, noNaN: true }), angle => {
      expect(sinDegrees(angle)).toBeCloseTo(Math.sin(radians(angle)), 13)
      expect(cosDegrees(angle)).toBeCloseTo(Math.cos(radians(angle)), 13)
      expect(degrees(radians(angle))).toBeCloseTo(angle, 10)
    }),
  )
})
