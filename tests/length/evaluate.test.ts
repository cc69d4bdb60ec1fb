import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/length/evaluate.ts'
import type { CalculatingFault } from '../../src/length/fault.ts'
import { readSize } from '../../src/length/read-size.ts'
import { type NamedValue, within } from '../../src/length/scope.ts'
import { calculated, fault, givenLength, mm, value } from './reading.ts'

const scope = new Map<string, NamedValue>([
  ['gauge', givenLength(55.5625)],
  ['board', givenLength(11.1125)],
  ['zero', givenLength(0)],
  ['off_drawing', { kind: 'length', mm: 10, basis: 'scaled' }],
  ['allowance', { kind: 'length', mm: 3.175, basis: 'assumed' }],
  ['tilt', { kind: 'angle', angleDegrees: 30, basis: 'given' }],
  ['count', { kind: 'number', value: 5, basis: 'given' }],
  ['missing', { kind: 'unknown', names: [] }],
  ['half_missing', { kind: 'unknown', names: ['missing'] }],
  ['broken', { kind: 'faulty' }],
])

const formulas: readonly [text: string, mm: number, why?: string][] = [
  ['gauge', 55.5625],
  ['gauge / 2 + 1/16', 29.36875, 'the contract: 1 5/32'],
  ['gauge + 2 * board + 3/4', 96.8375],
  ['2 * board + 3/4', 41.275],
  ['gauge/2', 27.78125],
  ['-gauge', -55.5625],
  ['(gauge - board) / (count - 1)', 11.1125],
  ['gauge / board * 1 mm', 5],
  ['gauge * sin(tilt)', 27.78125],
  ['gauge * tan(tilt + 15)', 55.5625],
  ['max(gauge, 3)', 76.2, 'the 3 beside a length is inches'],
  ['min(board, 1/2) / 2', 5.55625],
  ['round(gauge / 3, 1/32)', 18.25625, '23/32, from 0.72917 = 23.33 32nds'],
  ['count * 2', 254, 'a plain number alone at the end is inches'],
]

test.each(formulas)('"%s" is %d mm', (text, wanted) => {
  expect(mm(text, 'inch', scope)).toBeCloseTo(wanted, 10)
})

describe('where a value came from', () => {
  test.each([
    ['3', 'given', 'as it was written'],
    ['-3', 'given', 'a minus calculates nothing'],
    ['(3)', 'given', 'nor do brackets'],
    ['gauge', 'given', 'a name alone is what it stands for'],
    ['allowance', 'assumed', 'a name alone is what it stands for'],
    ['off_drawing', 'scaled', 'a name alone is what it stands for'],
    ['gauge / 2', 'derived', 'calculated'],
    ['1 + 2', 'derived', 'calculated'],
    ['gauge + allowance', 'derived', 'calculated'],
    ['gauge + off_drawing', 'scaled', 'scaled travels'],
    ['max(gauge, 2 * off_drawing)', 'scaled', 'even where the scaled value was not the larger'],
    ['~ 3', 'scaled', 'as written'],
    ['~ gauge + 3', 'scaled', 'as written'],
  ])('"%s" is %s: %s', (text, basis) => {
    expect(value(calculated(text, 'inch', scope))).toMatchObject({ kind: 'length', basis })
  })
})

describe('what the drawing does not give', () => {
  test.each([
    ['unknown', []],
    ['missing', ['missing']],
    ['gauge + missing', ['missing']],
    ['missing * missing', ['missing']],
    ['half_missing / 2', ['missing']],
    ['gauge / missing', ['missing']],
    ['3 / missing', ['missing']],
    ['gauge * sin(missing)', ['missing']],
    ['min(missing, 1)', ['missing']],
    ['round(gauge, missing)', ['missing']],
    ['~ sqrt(missing)', ['missing']],
  ])('"%s" is unknown because of %j', (text, names) => {
    expect(value(calculated(text, 'inch', scope))).toEqual({ kind: 'unknown', names })
  })
})

const miscalculated: Readonly<
  Record<
    Exclude<CalculatingFault, 'cycle' | 'precision-unusable'>,
    readonly [text: string, found: string, nearest?: string][]
  >
> = {
  'unknown-name': [
    ['guage / 2', 'guage', 'gauge'],
    ['3 + Board', 'Board', 'board'],
    ['gauge + something', 'something'],
    ['missing + nonesuch', 'nonesuch'],
  ],
  'faulty-name': [['gauge + broken', 'broken']],
  'wrong-kind': [
    ['gauge + tilt', 'gauge + tilt'],
    ['3 * (gauge - tilt)', '(gauge - tilt)'],
    ['gauge * tilt', 'gauge * tilt'],
    ['gauge / tilt', 'gauge / tilt'],
    ['tilt / gauge', 'tilt / gauge'],
    ['3 / tilt', '3 / tilt'],
    ['max(gauge, tilt)', 'max(gauge, tilt)'],
    ['round(gauge, tilt)', 'round(gauge, tilt)'],
    ['1 + sqrt(gauge)', 'sqrt(gauge)'],
    ['gauge * sin(board)', 'sin(board)'],
    ['2 * tilt', '2 * tilt'],
  ],
  'length-times-length': [
    ['gauge * board', 'gauge * board'],
    ['1 + 3" * gauge / 2', '3" * gauge'],
    ['gauge * missing * board', 'gauge * missing * board'],
  ],
  'number-over-length': [['1 + 3 / gauge', '3 / gauge']],
  'division-by-zero': [
    ['gauge / zero', 'zero'],
    ['3 / (count - 5)', '(count - 5)'],
    ['missing / 0', '0'],
    ['1 / sin(180)', 'sin(180)'],
  ],
  'root-of-negative': [['3 + sqrt(2 - count)', 'sqrt(2 - count)']],
  'step-not-positive': [
    ['round(gauge, 0)', 'round(gauge, 0)'],
    ['round(gauge, -1/16)', 'round(gauge, -1/16)'],
  ],
  'not-finite': [
    ['tan(90)', 'tan(90)'],
    [Array.from({ length: 60 }, () => '999999').join('*'), '999999*999999*999999*999999*999999*99999…'],
  ],
  'too-large': [
    ['1000000', '1000000'],
    ['~ 1000 * 1000', '~ 1000 * 1000'],
    ['-100 * 100 ft', '-100 * 100 ft'],
  ],
}

for (const [code, cases] of Object.entries(miscalculated)) {
  test.each(cases)(`%j is refused as ${code}`, (text, found, nearest) => {
    const refusal = fault(calculated(text, 'inch', scope))
    expect(refusal).toMatchObject({ code, found })
    expect(refusal.nearest).toBe(nearest)
    expect(text.slice(refusal.from, refusal.to).startsWith(found.replace('…', ''))).toBe(true)
    expect(refusal.wanted).not.toBe('')
  })
}

test('a kilometre is the longest length', () => {
  expect(mm('1000000', 'mm')).toBe(1_000_000)
  expect(fault(calculated('1000000 + 1', 'mm')).code).toBe('too-large')
})

test("a part's own names come before those of the plan", () => {
  const own = new Map([['gauge', givenLength(10)]])
  const both = within(own, scope)
  expect(value(evaluate(value(readSize('gauge + board')), both, 'inch'))).toMatchObject({ mm: 21.1125 })
  expect(fault(evaluate(value(readSize('bord')), both, 'inch')).nearest).toBe('board')
})

test('a name that every object has is no name', () => {
  expect(fault(calculated('constructor', 'inch', scope)).code).toBe('unknown-name')
})
