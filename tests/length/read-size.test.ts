import { describe, expect, test } from 'vitest'
import { readSize } from '../../src/length/read-size.ts'
import { mm, value } from './reading.ts'

/** What is written, what it is in millimetres where a bare number is inches, and why. */
const sizes: readonly [string, number, string][] = [
  ['3', 76.2, '25.4 mm an inch, international yard and pound agreement, 1959'],
  ['0', 0, 'definition'],
  ['1/64', 0.396875, 'definition'],
  ['11/64', 4.365625, 'definition'],
  ['37/64', 14.684375, 'definition'],
  ['63/64', 25.003125, 'definition'],
  ['2 1/2', 63.5, 'definition'],
  ['2  1/2', 63.5, 'more than one space is one space'],
  [
    '1-3/16',
    30.1625,
    'a hyphen without spaces joins a whole number and its fraction: common practice, no source',
  ],
  ['1 - 3/16', 20.6375, 'a minus has spaces round it'],
  ['-3', -76.2, 'definition'],
  ['-1-3/16', -30.1625, 'the minus before a mixed number stands for all of it'],
  ['.5', 12.7, 'definition'],
  ['2.1875', 55.5625, '2 3/16'],
  ['5/8"', 15.875, 'definition'],
  ['5/8 "', 15.875, 'definition'],
  ['5/8 in', 15.875, 'NIST SP 811, unit symbol in (from memory)'],
  ['5/8 in.', 15.875, 'common practice, no source'],
  ['5/8 inch', 15.875, 'definition'],
  ['2 inches', 50.8, 'definition'],
  ['12.5 mm', 12.5, 'definition'],
  ['12.5mm', 12.5, 'definition'],
  ['12.5 MM', 12.5, 'definition'],
  ['3 cm', 30, 'definition'],
  ["1'", 304.8, '12 in a foot, NIST SP 811 (from memory)'],
  ['1 ft', 304.8, 'as above'],
  ['2 feet', 609.6, 'as above'],
  ['1 1/2 ft', 457.2, 'as above'],
  ['1\' 4 1/2"', 419.1, 'as above'],
  ['1\'4 1/2"', 419.1, 'as above'],
  ['1\'-4 1/2"', 419.1, 'the hyphen of building drawings: common practice, no source'],
  ["1' 4", 406.4, 'a number after feet is inches: common practice, no source'],
  ['6 ft 2 in', 1879.6, 'as above'],
  ['1\' - 4"', 203.2, 'a minus has spaces round it'],
  ["5''", 127, 'two foot marks for an inch mark'],
  ['2½″', 63.5, 'typographic marks'],
  ['2 ½ ”', 63.5, 'typographic marks'],
  ['⅜', 9.525, 'typographic marks'],
  ['¼″', 6.35, 'typographic marks'],
  ['7⅞', 200.025, 'typographic marks'],
  ['5⁄8', 15.875, 'fraction slash U+2044'],
  ['1’ 4½”', 419.1, 'typographic marks'],
  ['1–3/16', 30.1625, 'a word processor makes the hyphen longer'],
  ['3 − 1/2', 63.5, 'minus sign U+2212'],
  ['2 × 3', 152.4, '× multiplies'],
  ['3 ÷ 2', 38.1, '÷ divides'],
  ['  3  ', 76.2, 'spaces round it do not matter'],
  ['2 1/2 / 2', 31.75, 'the contract: 1 1/4'],
  ['2 1/2"/2', 31.75, 'as above'],
  ['6 / 3/4', 203.2, 'a fraction is one number: 8'],
  ['3/4 * 2', 38.1, 'definition'],
  ['1 + 2 * 3', 177.8, '× binds closer'],
  ['(1 + 2) * 3', 228.6, 'brackets'],
  ['10 - 2 - 3', 127, 'from left to right'],
  ['24 / 4 / 2', 76.2, 'from left to right'],
  ['2 * -3', -152.4, 'a minus before a number'],
  ['1 + 12.7 mm', 38.1, 'a bare number beside a length is in the unit of the plan'],
  ['2 * 12.7 mm', 25.4, 'a bare number times a length is plain'],
  ['1" / 1/4"', 101.6, 'a length over a length is plain, and alone at the end in the unit of the plan'],
  ['min(3, 2 1/2, 4)', 63.5, 'definition'],
  ['max(3, 80 mm)', 80, 'definition'],
  ['sqrt(2) * 10 mm', 14.142135623730951, 'definition'],
  ['10 mm * sin(30)', 5, 'definition'],
  ['10 mm * cos(60°)', 5, 'definition'],
  ['10 mm * tan(45 deg)', 10, 'definition'],
  ['round(1 1/3, 1/16)', 33.3375, '1 5/16, the nearest 16th'],
  ['round(50 mm, 1/8)', 50.8, '2 in, the nearest 8th'],
  ['round(7, 2)', 203.2, 'half-way goes up'],
]

test.each(sizes)('"%s" is %d mm in an inch plan (%s)', (text, wanted) => {
  expect(mm(text)).toBeCloseTo(wanted, 10)
})

test.each([
  ['3', 3],
  ['12.5', 12.5],
  ['2 1/2', 2.5],
  ['1/4"', 6.35],
  ['100 - 1/4"', 93.65],
  ['1 ft', 304.8],
  ['3 cm + 5', 35],
] as const)('"%s" is %d mm in a millimetre plan', (text, wanted) => {
  expect(mm(text, 'mm')).toBeCloseTo(wanted, 10)
})

describe('what stands round a size', () => {
  test('a ~ before the whole size says that it was scaled off the drawing', () => {
    expect(value(readSize('~3/8'))).toMatchObject({ kind: 'size', scaled: true, written: '~3/8' })
    expect(value(readSize(' ~ gauge / 2'))).toMatchObject({ scaled: true })
    expect(value(readSize('3/8'))).toMatchObject({ scaled: false })
  })

  test('"unknown" alone says that the drawing does not give it', () => {
    expect(value(readSize('unknown'))).toEqual({ kind: 'unknown', written: 'unknown' })
    expect(value(readSize(' unknown '))).toEqual({ kind: 'unknown', written: ' unknown ' })
  })

  test('offsets count from the beginning of the text, through ~ and spaces, in UTF-16 units', () => {
    const size = value(readSize(' ~ 𝑎 + (gauge)'))
    expect(size).toMatchObject({
      expression: { from: 3, to: 15, left: { from: 3, to: 5, name: '𝑎' }, right: { from: 8, to: 15 } },
    })
  })

  test('a name is letters, digits and _, and is not a unit where a value is wanted', () => {
    expect(value(readSize('rail_2'))).toMatchObject({ expression: { kind: 'name', name: 'rail_2' } })
    expect(value(readSize('höhe'))).toMatchObject({ expression: { kind: 'name', name: 'höhe' } })
  })
})
