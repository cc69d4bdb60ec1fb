import fc from 'fast-check'
import { expect, test } from 'vitest'
import { longestDecimal, putDecimal, writeDecimal } from '../../src/number/write-decimal.ts'

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

test("the digits are those of the language's own toFixed, ties between two decimals and what is nearly one too", () => {
  const some = fc.double({ min: -1e6, max: 1e6, noNaN: true })
  const onTie = fc
    .tuple(
      fc.integer({ min: -4096, max: 4096 }),
      fc.integer({ min: 0, max: 12 }),
      fc.integer({ min: -3, max: 3 }),
    )
    .map(([n, power, off]) => (n / 2 ** power) * (1 + off * Number.EPSILON))
  fc.assert(
    fc.property(fc.oneof(some, onTie), fc.integer({ min: 0, max: 9 }), (value, places) => {
      const padded = value.toFixed(places)
      const trimmed = padded.includes('.') ? padded.replace(/\.?0+$/, '') : padded
      expect(writeDecimal(value, places)).toBe(trimmed === '-0' ? '0' : trimmed)
    }),
    { numRuns: 3000 },
  )
})

test('as codes of letters a number is what it is as text', () => {
  const any = fc.double({ min: -1e21, max: 1e21, minExcluded: true, maxExcluded: true, noNaN: true })
  const usual = fc.double({ min: -1e4, max: 1e4, noNaN: true })
  const short = fc.tuple(fc.integer({ min: -99_999, max: 99_999 }), fc.integer({ min: 0, max: 5 }))
  const value = fc.oneof(
    any,
    usual,
    short.map(([n, power]) => n / 10 ** power),
  )
  const room = new Uint8Array(longestDecimal + 2)
  fc.assert(
    fc.property(value, fc.integer({ min: 0, max: 15 }), (value, places) => {
      room.fill(0xff)
      const end = putDecimal(value, places, room, 1)
      expect(String.fromCharCode(...room.subarray(1, end))).toBe(writeDecimal(value, places))
      expect([room[0], room[end]]).toEqual([0xff, 0xff])
    }),
    { numRuns: 3000 },
  )
})

test('a whole number of any size has the digits of toFixed', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 69 }), fc.integer({ min: -1, max: 1 }), (power, off) => {
      const value = 2 ** power + off
      expect(writeDecimal(value, 12)).toBe(value.toFixed(0))
    }),
  )
})
