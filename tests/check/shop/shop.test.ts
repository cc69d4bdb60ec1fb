import { expect, test } from 'vitest'
import { bitMissing } from '../../../src/check/shop/bit-missing.ts'
import { largerThanStock } from '../../../src/check/shop/larger-than-stock.ts'
import { smallPiece } from '../../../src/check/shop/small-piece.ts'
import { templateMissing } from '../../../src/check/shop/template-missing.ts'
import { entryHole } from '../../../src/check/wood/entry-hole.ts'
import { defaultWorkshop } from '../../../src/workshop/defaults.ts'
import { planOf, planWithCuts } from '../../model/model-of.ts'
import { found, only } from '../found.ts'

const inch = 25.4

test.each<[cut: string, nearest: number, what: string]>([
  ['hole: pin, at: center, diameter: 5.2', (13 / 64) * inch, 'hole'],
  ['hole: pin, at: center, diameter: 5.4', 5.5, 'hole'],
  ['hole: pin, at: center, diameter: 35', inch, 'hole'],
  ['row: posts, at: center, toward: right, spacing: 12, count: 4, diameter: 4.1', 4, 'row'],
])('there is no bit for { %s }', (cut, nearest, what) => {
  const finding = only(bitMissing, planWithCuts([cut]))
  expect(finding).toMatchObject({ severity: 'note', facts: { what } })
  expect(finding.facts.nearest!.value).toBeCloseTo(nearest, 9)
  expect(finding.facts.difference!.value).toBeCloseTo(nearest - finding.measured!.value, 9)
})

test('a bit of the other unit is a bit, and so is what the workshop file adds', () => {
  expect(found(bitMissing, planWithCuts(['hole: pin, at: center, diameter: 1/4"']))).toEqual([])
  const { bits } = defaultWorkshop
  const shop = { ...defaultWorkshop, bits: { ...bits, mm: [...bits.mm, 35] } }
  expect(found(bitMissing, planWithCuts(['hole: cup, at: center, diameter: 35']), shop)).toEqual([])
})

test('a corner that is in no circle template is found with the nearest', () => {
  const finding = only(
    templateMissing,
    planOf('    corners: { top-left: 5.3, top-right: 5.3, bottom-left: 5 }\n'),
  )
  expect(finding).toMatchObject({ severity: 'note', facts: { corners: 'top-right, top-left' } })
  expect(finding.facts.nearest.value).toBeCloseTo(5.5, 9)
})

test.each(['    corners: 5\n', '    corners: 1/4"\n', '    corners: { chamfer: 5.3 }\n'])(
  'case %#: a corner that is in the set, or no arc, is not found',
  body => {
    expect(found(templateMissing, planOf(body))).toEqual([])
  },
)

test('a corner larger than any template is drawn with compasses', () => {
  expect(found(templateMissing, planOf('    corners: { top-left: 55.3 }\n', '200 x 90 x 20'))).toEqual([])
})

const fromStock = (stock: string, size: string) =>
  planOf('    from: board\n', size).replace('parts:', `stock: { board: { ${stock} } }\nparts:`)

test.each<[size: string, direction: string, limit: number, severity: string, boards?: number]>([
  ['601 x 90 x 20', 'length', 600, 'error'],
  ['500 x 101 x 20', 'width', 100, 'error'],
  ['500 x 90 x 50', 'thickness', 20, 'note', 3],
  ['500 x 90 x 40', 'thickness', 20, 'warning', 2],
])('a part of %s is larger than 600 x 100 x 20: its %s', (size, direction, limit, severity, boards) => {
  const text = fromStock('length: 600, width: 100, thickness: 20', size)
  const finding = only(largerThanStock, text)
  expect(finding).toMatchObject({ severity, facts: { direction, stock: 'board' }, limit: { value: limit } })
  expect(finding.facts.boards?.value).toBe(boards)
})

test('a part that comes out of its stock, or whose stock is of no known size, is not found', () => {
  expect(
    found(largerThanStock, fromStock('length: 600, width: 100, thickness: 20', '600 x 100 x 20')),
  ).toEqual([])
  expect(found(largerThanStock, fromStock('thickness: 20', '900 x 300'))).toEqual([])
})

test('the longer side of a part lies along the board, and a leaning part is turned', () => {
  const stock = 'length: 600, width: 100, thickness: 20'
  expect(found(largerThanStock, fromStock(stock, '90 x 500 x 20'))).toEqual([])
  expect(only(largerThanStock, fromStock(stock, '110 x 500 x 20')).facts.direction).toBe('length')
  // a brace at 45°, 80·√2/2 = 56.6 wide, in a rectangle of 380 x 300
  const brace = fromStock(stock, '1 x 1').replace(
    'size: 1 x 1',
    'outline: [{ to: [0, 0] }, { to: [80, 0] }, { to: [380, 300] }, { to: [300, 300] }]',
  )
  expect(found(largerThanStock, brace)).toEqual([])
})

test('a piece that is shorter than 3 in is not cut off by itself (common practice, no source)', () => {
  const finding = only(smallPiece, planOf('', '70 x 76 x 20'))
  expect(finding).toMatchObject({
    severity: 'note',
    measured: { value: 76 },
    facts: { parts: 'plank', count: { value: 1 } },
  })
  expect(finding.limit!.value).toBeCloseTo(3 * inch, 9)
  expect(found(smallPiece, planOf('', '20 x 77 x 20'))).toEqual([])
})

test('a cut-out wants room for a blade, and its entry hole lies in the waste', () => {
  const narrow = 'cut-out: slit, at: center, size: 40 x 1'
  expect(only(entryHole, planWithCuts([narrow]))).toMatchObject({ severity: 'warning', facts: {} })
  const off = 'cut-out: window, at: center, size: 40 x 20, entry: { at: { left: 32, bottom: 20 }, bit: 8 }'
  // the window begins at 30, the hole at 28
  expect(only(entryHole, planWithCuts([off]))).toMatchObject({ severity: 'error', measured: { value: 2 } })
  expect(found(entryHole, planWithCuts(['cut-out: window, at: center, size: 40 x 20']))).toEqual([])
})
