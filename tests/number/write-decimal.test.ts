import fc from 'fast-check'
import { expect, test } from 'vitest'
import { writeDecimal } from '../../src/number/write-decimal.ts'

test.each([
  [63.5, 2, '63.5'],
  [100, 2, '100'],
  [100, 0, '100'],
  [0, 3, '0'],
  [-0, 3, '0'],
  [-0.0001, 2, '0'],
  [0.1 + 0.2, 6, '0.3'],
  [1e-7, 6, '0'],
  [123456789.125, 3, '123456789.125'],
  [1e20, 2, '100000000000000000000'],
  [-2.5, 4, '-2.5'],
])('%d to %d places is %s', (value, places, wanted) => {
  expect(writeDecimal(value, places)).toBe(wanted)
})

test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 1e21, -1e22])(
  '%d is refused',
  value => {
    expect(() => writeDecimal(value, 3)).toThrow(RangeError)
  },
)

test('what is written is plain, and reads back within half a last place', () => {
  const value = fc.double({ min: -1e6, max: 1e6, noNaN: true })
  fc.assert(
    fc.property(value, fc.integer({ min: 0, max: 9 }), (value, places) => {
      const written = writeDecimal(value, places)
      expect(written).toMatch(/^-?\d+(\.\d*[1-9])?$/)
      expect(written).not.toBe('-0')
      expect(Math.abs(Number(written) - value)).toBeLessThanOrEqual(0.5000001 * 10 ** -places)
    }),
  )
})
