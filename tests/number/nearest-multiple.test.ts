import { expect, test } from 'vitest'
import { nearestMultiple } from '../../src/number/nearest-multiple.ts'

test.each([
  [7, 2, 4],
  [6.9, 2, 3],
  [-7, 2, -4],
  [0, 0.1, 0],
  [0.3, 0.1, 3],
  [2.5, 1, 3],
])('%d is nearest to %d times %d steps, and half-way goes away from zero', (value, step, steps) => {
  expect(nearestMultiple(value, step)).toBe(steps)
})

test('nothing becomes -0', () => {
  expect(nearestMultiple(-0, 1)).toBe(0)
  expect(Object.is(nearestMultiple(-0.1, 1), 0)).toBe(true)
})

test('what misses half-way by the slack counts as half-way', () => {
  expect(nearestMultiple(2.4999, 1)).toBe(2)
  expect(nearestMultiple(2.4999, 1, 0.0001)).toBe(3)
  expect(nearestMultiple(-2.4999, 1, 0.0001)).toBe(-3)
})

test.each([
  [Number.NaN, 1],
  [Number.POSITIVE_INFINITY, 1],
  [1, 0],
  [1, -1],
  [1, Number.NaN],
])('%d in steps of %d is refused', (value, step) => {
  expect(() => nearestMultiple(value, step)).toThrow(RangeError)
})
