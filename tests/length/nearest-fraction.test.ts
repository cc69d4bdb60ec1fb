import { expect, test } from 'vitest'
import { nearestFraction } from '../../src/length/nearest-fraction.ts'

/** A length in mm, the nearest 64th and its error. Source: calculated from 1 in = 25.4 mm. */
test.each([
  [5, 0, 13, 64, 0.1594],
  [6, 0, 15, 64, -0.0469],
  [10, 0, 25, 64, -0.0781],
  [18, 0, 45, 64, -0.1406],
  [25.4, 1, 0, 1, 0],
  [63.5, 2, 1, 2, 0],
  [4.365625, 0, 11, 64, 0],
  [14.684375, 0, 37, 64, 0],
  [25.003125, 0, 63, 64, 0],
  [0, 0, 0, 1, 0],
])('%d mm is %d and %d/%d of an inch, off by %d mm', (mm, whole, over, under, error) => {
  const fraction = nearestFraction(mm, 64)
  expect(fraction).toMatchObject({ negative: false, whole, over, under })
  expect(fraction.error).toBeCloseTo(error, 4)
})

test.each([
  [32, 5, 32],
  [16, 3, 16],
  [8, 1, 8],
  [4, 1, 4],
])('5/32 to the nearest %d-th is %d/%d, and half-way goes up', (denominator, over, under) => {
  expect(nearestFraction(3.96875, denominator)).toMatchObject({ over, under })
})

test('half-way is half-way although the binary number misses it by a hair', () => {
  const half = 25.4 / 128
  for (const mm of [half, half - 1e-9, half + 1e-9])
    expect(nearestFraction(mm, 64)).toMatchObject({ over: 1 })
})

test('a negative length is the fraction of its size with a minus, and -0 is 0', () => {
  expect(nearestFraction(-63.5, 64)).toMatchObject({ negative: true, whole: 2, over: 1, under: 2, error: 0 })
  expect(nearestFraction(-1e-9, 64)).toMatchObject({ negative: false, whole: 0, over: 0 })
})
