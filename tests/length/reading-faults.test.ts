import { expect, test } from 'vitest'
import type { ReadingFault } from '../../src/length/fault.ts'
import { readAngle } from '../../src/length/read-angle.ts'
import { readDimensions } from '../../src/length/read-dimensions.ts'
import { readName } from '../../src/length/read-name.ts'
import { readSize } from '../../src/length/read-size.ts'
import { fault } from './reading.ts'

type Case = [text: string, found: string, from: number, nearest?: string]

const misread: Readonly<
  Record<Exclude<ReadingFault, 'dimension-count' | 'not-a-name' | 'reserved-name'>, readonly Case[]>
> = {
  empty: [
    ['', '', 0],
    ['  ', '  ', 0],
    ['~', '~', 0],
    ['~ ', '~ ', 0],
  ],
  'too-long': [[`1${' + 1'.repeat(300)}`, `1${' + 1'.repeat(9)} + …`, 0]],
  'too-deep': [
    [`${'('.repeat(40)}1${')'.repeat(40)}`, '(', 32],
    [`${'-'.repeat(40)}1`, '-', 32],
    [`${'max('.repeat(40)}1${')'.repeat(40)}`, '(', 131],
  ],
  'number-too-large': [
    ['1000001', '1000001', 0],
    ['2 * 99999999999999999999999', '99999999999999999999999', 4],
    [`${'9'.repeat(400)}`, `${'9'.repeat(40)}…`, 0],
  ],
  'strange-character': [
    ['#4', '#', 0],
    ['3 = 3', '=', 2],
    ['3\u0000', '\u0000', 1],
    ['2 \u{1F600}', '\u{1F600}', 2],
    ['\u202E3', '\u202E', 0],
    ['3;', ';', 1],
    ['[3]', '[', 0],
    ['1 + \uD800', '\uD800', 4],
  ],
  'decimal-point': [
    ['5.', '5.', 0],
    ['1 + 1.2.3', '1.2.3', 4],
  ],
  'decimal-comma': [
    ['12,5 mm', ',', 2],
    ['1,000', ',', 1],
    ['(12,5)', ',', 3],
    ['max(12,5 mm, 3 mm)', ',', 6],
  ],
  'stray-comma': [
    ['3, 4', ',', 1],
    ['gauge,', ',', 5],
  ],
  'zero-denominator': [
    ['3/0', '3/0', 0],
    ['2 + 1 1/00', '1 1/00', 4],
  ],
  'fraction-too-large': [
    ['2 5/4', '2 5/4', 0],
    ['1-4/4', '1-4/4', 0],
  ],
  'unknown-unit': [
    ['2 mn', 'mn', 2, 'mm'],
    ['2 m', 'm', 2, 'mm'],
    ['2 inche', 'inche', 2, 'inch'],
    ['2 fet', 'fet', 2, 'ft'],
  ],
  'unit-misplaced': [
    ['mm', 'mm', 0],
    ['gauge mm', 'mm', 6],
    ['(1 + 2) in', 'in', 8],
    ['3 mm mm', 'mm', 5],
    ['" 3', '"', 0],
  ],
  'unknown-function': [
    ['sqr(2)', 'sqr', 0, 'sqrt'],
    ['Min(2)', 'Min', 0, 'min'],
    ['board(2)', 'board', 0],
    ['toString(2)', 'toString', 0],
  ],
  'argument-count': [
    ['sqrt(2, 3)', 'sqrt(2, 3)', 0],
    ['1 + min()', 'min()', 4],
    ['round(3)', 'round(3)', 0],
    ['max', 'max', 0],
  ],
  'missing-operator': [
    ['2 board', 'board', 2],
    ['2 3', '3', 2],
    ['2 1/2 1/2', '1/2', 6],
    ['2(3)', '(', 1],
    ['1e3', 'e3', 1],
    ['gauge 2', '2', 6],
  ],
  'missing-value': [
    ['2 +', '+', 2],
    ['2 + ', '+', 2],
    ['2 * / 3', '/', 4],
    ['()', ')', 1],
    ['+3', '+', 0],
    ['max(1,)', ')', 6],
    ['-', '-', 0],
  ],
  'minus-unclear': [
    ['gauge-1', '-', 5],
    ['3-1', '-', 1],
    ['3 -1/16', '-', 2],
    ['3- 1/16', '-', 1],
    ['5-1/2-1/4', '-', 5],
    ['1−3/16', '−', 1],
  ],
  'division-unclear': [
    ['1/2/3', '/', 3],
    ['gauge/3/4', '/', 5],
    ['6 /3/4', '/', 2],
  ],
  unclosed: [
    ['(3', '(', 0],
    ['2 * (3 + (4 + 5)', '(', 4],
    ['max(3', '(', 3],
  ],
  unopened: [
    ['3)', ')', 1],
    ['(3))', ')', 3],
  ],
  'tilde-first': [
    ['2 ~3', '~', 2],
    ['~~3', '~', 1],
    ['gauge + ~3', '~', 8],
  ],
  'unknown-alone': [
    ['unknown + 1', 'unknown', 0],
    ['~unknown', 'unknown', 1],
  ],
  'several-sizes': [
    ['3 1/2 x 2', 'x', 6],
    ['3 X 2', 'X', 2],
    ['x', 'x', 0],
    ['3 x', 'x', 2],
  ],
  'x-needs-spaces': [
    ['3x2', 'x2', 1],
    ['3x 2', 'x', 1],
    ['board x2', 'x2', 6],
  ],
}

for (const [code, cases] of Object.entries(misread)) {
  test.each(cases)(`%j is refused as ${code} at %j`, (text, found, from, nearest) => {
    const refusal = fault(readSize(text))
    expect(refusal).toMatchObject({ code, found, from })
    expect(refusal.nearest).toBe(nearest)
    expect(refusal.wanted).not.toBe('')
    expect(refusal.to).toBeGreaterThanOrEqual(refusal.from)
    expect(refusal.to).toBeLessThanOrEqual(text.length)
  })
}

test.each([
  ['3', 'dimension-count', '3', 0],
  ['1 x 2 x 3 x 4', 'dimension-count', '1 x 2 x 3 x 4', 0],
  ['6 x', 'empty', '', 3],
  ['x 6', 'empty', '', 0],
  ['6 x x 6', 'empty', '', 4],
  ['6x2', 'x-needs-spaces', 'x2', 1],
  ['6 7/8 x 2 mn x 3', 'unknown-unit', 'mn', 10],
  ['6 x 12,5 mm', 'decimal-comma', ',', 6],
  ['3 * (2 x 4)', 'several-sizes', 'x', 7],
] as const)(
  'the dimensions %j are refused as %s, with the place in the whole text',
  (text, code, found, from) => {
    expect(fault(readDimensions(text))).toMatchObject({ code, found, from })
  },
)

test('a text too long for three sizes is refused before it is looked at', () => {
  expect(fault(readDimensions('1 x 2 '.repeat(1000)))).toMatchObject({ code: 'too-long', from: 0, to: 6000 })
})

test.each([
  ['2nd', 'not-a-name'],
  ['front-axle', 'not-a-name'],
  ['_a', 'not-a-name'],
  ['', 'not-a-name'],
  ['a b', 'not-a-name'],
  ['a'.repeat(61), 'not-a-name'],
  ['x', 'reserved-name'],
  ['mm', 'reserved-name'],
  ['In', 'reserved-name'],
  ['min', 'reserved-name'],
  ['unknown', 'reserved-name'],
] as const)('%j cannot name a size: %s', (text, code) => {
  expect(fault(readName(text))).toMatchObject({ code })
})

test('an angle that is unknown, a length or beyond a full turn is refused', () => {
  expect(fault(readAngle('unknown')).code).toBe('unknown-alone')
  expect(fault(readAngle('45 mm')).code).toBe('wrong-kind')
  expect(fault(readAngle('361')).code).toBe('too-large')
  expect(fault(readAngle('45 dge'))).toMatchObject({ code: 'unknown-unit', nearest: 'deg' })
})
