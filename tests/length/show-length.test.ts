import { describe, expect, test } from 'vitest'
import type { LengthStyle } from '../../src/length/precision.ts'
import { usablePrecision } from '../../src/length/precision.ts'
import { bothUnitsText, lengthText, showBothUnits, showLength } from '../../src/length/show-length.ts'
import { toMillimetres } from '../../src/length/unit.ts'
import { plain, type Words } from '../../src/text/words.ts'
import { fault, value } from './reading.ts'

function inches(step: number): LengthStyle {
  return { unit: 'inch', precision: toMillimetres(step, 'inch') }
}

function millimetres(precision: number): LengthStyle {
  return { unit: 'mm', precision }
}

test.each([
  [63.5, inches(1 / 64), '2 1/2"'],
  [76.2, inches(1 / 64), '3"'],
  [0, inches(1 / 64), '0"'],
  [-63.5, inches(1 / 64), '-2 1/2"'],
  [4.365625, inches(1 / 64), '11/64"'],
  [4.365625, inches(1 / 32), '≈ 3/16" (0.172")'],
  [5, inches(1 / 64), '≈ 13/64" (0.197")'],
  [18, inches(1 / 64), '≈ 45/64" (0.709")'],
  [5.1, inches(1 / 128), '≈ 13/64" (0.201")'],
  [63.5, inches(1), '≈ 3" (2.5")'],
  [55.5625, inches(0.001), '2.188"'],
  [12.7, inches(0.01), '0.5"'],
  [63.5, millimetres(0.1), '63.5 mm'],
  [63.5, millimetres(0.5), '63.5 mm'],
  [63.5, millimetres(1), '≈ 64 mm (63.5 mm)'],
  [55.5625, millimetres(0.1), '≈ 55.6 mm (55.56 mm)'],
  [9.525, millimetres(0.01), '9.53 mm'],
  [1000, millimetres(0.25), '1000 mm'],
])('%d mm to the nearest %j is shown as %s', (mm, style, wanted) => {
  expect(lengthText(mm, style)).toBe(wanted)
})

test('a fraction off by 0.02 mm is exact enough, and one off by more is marked', () => {
  const quarter = 6.35
  expect(lengthText(quarter + 0.0199, inches(1 / 64))).toBe('1/4"')
  expect(lengthText(quarter + 0.0201, inches(1 / 64))).toBe('≈ 1/4" (0.251")')
  expect(lengthText(10.0199, millimetres(0.5))).toBe('10 mm')
  expect(lengthText(10.0201, millimetres(0.5))).toBe('≈ 10 mm (10.02 mm)')
})

describe('as pieces', () => {
  test('fractions stand apart, to be set one number over another', () => {
    expect(showLength(63.5, inches(1 / 64))).toEqual([{ whole: '2', over: '1', under: '2' }, '"'])
    expect(showLength(12.7, inches(1 / 64))).toEqual([{ over: '1', under: '2' }, '"'])
    expect(showLength(-12.7, inches(1 / 64))).toEqual(['-', { over: '1', under: '2' }, '"'])
    expect(showLength(5, inches(1 / 64), { basis: 'scaled' })).toEqual([
      '~≈ ',
      { over: '13', under: '64' },
      '" (0.197")',
    ])
    expect(showLength(76.2, inches(1 / 64))).toEqual(['3"'])
    expect(showBothUnits(63.5, millimetres(0.5))).toEqual([
      '63.5 mm (',
      { whole: '2', over: '1', under: '2' },
      '")',
    ])
  })

  test('they are the words that pages are set from, and read the same', () => {
    const words: Words = showBothUnits(419.1, inches(1 / 16), { feet: true })
    expect(plain(words)).toBe(bothUnitsText(419.1, inches(1 / 16), { feet: true }))
  })
})

test('a size that was scaled off the drawing is shown with ~', () => {
  expect(lengthText(63.5, inches(1 / 64), { basis: 'scaled' })).toBe('~2 1/2"')
  expect(lengthText(63.5, millimetres(0.5), { basis: 'scaled' })).toBe('~63.5 mm')
  for (const basis of ['given', 'derived', 'assumed'] as const) {
    expect(lengthText(63.5, inches(1 / 64), { basis })).toBe('2 1/2"')
  }
})

test('the unit mark can be left to the words around it', () => {
  expect(lengthText(63.5, inches(1 / 64), { unitMark: false })).toBe('2 1/2')
  expect(lengthText(5, inches(1 / 64), { unitMark: false })).toBe('≈ 13/64 (0.197)')
  expect(lengthText(63.5, millimetres(0.5), { unitMark: false })).toBe('63.5')
})

test.each([
  [419.1, '1\' 4 1/2"'],
  [304.8, "1'"],
  [311.15, '1\' 1/4"'],
  [-419.1, '-1\' 4 1/2"'],
  [292.1, '11 1/2"'],
])('%d mm in feet and inches is %s, and in feet only when asked for', (mm, wanted) => {
  expect(lengthText(mm, inches(1 / 64), { feet: true })).toBe(wanted)
  expect(lengthText(mm, inches(1 / 64))).not.toContain("'")
})

test.each([
  [63.5, inches(1 / 64), '2 1/2" (63.5 mm)'],
  [55.5625, inches(1 / 64), '2 3/16" (55.56 mm)'],
  [5, inches(1 / 64), '≈ 13/64" (0.197", 5 mm)'],
  [63.5, millimetres(0.1), '63.5 mm (2 1/2")'],
  [18, millimetres(0.1), '18 mm (≈ 45/64")'],
  [18.04, millimetres(0.1), '≈ 18 mm (18.04 mm, ≈ 45/64")'],
])('%d mm in both units, to the nearest %j, is %s', (mm, style, wanted) => {
  expect(bothUnitsText(mm, style)).toBe(wanted)
})

describe('the precision of a plan', () => {
  test.each([
    inches(1),
    inches(1 / 2),
    inches(1 / 64),
    inches(1 / 128),
    inches(0.01),
    millimetres(0.1),
    millimetres(0.5),
    millimetres(1),
  ])('may be %j', style => {
    expect(value(usablePrecision(style, 'as written'))).toBe(style)
  })

  test.each([
    inches(1 / 3),
    inches(1 / 512),
    inches(0),
    inches(-1 / 64),
    millimetres(25.4 / 64),
    millimetres(0),
    millimetres(0.00001),
  ])('may not be %j', style => {
    expect(fault(usablePrecision(style, '1/3'))).toMatchObject({ code: 'precision-unusable', from: 0, to: 3 })
  })
})

test('what cannot be a length is a fault of the program and is not shown', () => {
  expect(() => lengthText(Number.NaN, inches(1 / 64))).toThrow(RangeError)
  expect(() => lengthText(Number.POSITIVE_INFINITY, millimetres(1))).toThrow(RangeError)
  expect(() => lengthText(1, millimetres(0))).toThrow(RangeError)
})
