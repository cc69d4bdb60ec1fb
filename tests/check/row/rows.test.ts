import { expect, test } from 'vitest'
import { rowOffPart } from '../../../src/check/row/row-off-part.ts'
import { rowUneven } from '../../../src/check/row/row-uneven.ts'
import { planWithCuts } from '../../model/model-of.ts'
import { found, only } from '../found.ts'

/** On 100 x 40 x 20. */
test.each<[cut: string, by: number, count: number, of: number, beyond: string, what: string]>([
  [
    'row: posts, at: { left: 10, bottom: 20 }, toward: right, spacing: 30, count: 5, diameter: 4',
    32,
    2,
    5,
    'right',
    'row',
  ],
  [
    'row: posts, at: { left: 50, bottom: 8 }, toward: top, spacing: 15.5, count: 3, diameter: 4',
    1,
    1,
    3,
    'top',
    'row',
  ],
  [
    'row: posts, on: top, at: { left: 90, front: 5 }, toward: left, spacing: 45, count: 3, diameter: 4',
    2,
    1,
    3,
    'left',
    'row',
  ],
  [
    'grid: pegs, at: { left: 10, bottom: 10 }, spacing: 20 x 29, count: 5 x 2, diameter: 4',
    1,
    5,
    10,
    'top',
    'grid',
  ],
  [
    'hole-circle: bolts, at: { left: 50, bottom: 20 }, circle: 38, count: 4, diameter: 4',
    1,
    2,
    4,
    'top',
    'hole circle',
  ],
])('{ %s } runs %d mm off the part', (cut, by, count, of, beyond, what) => {
  const finding = only(rowOffPart, planWithCuts([cut]))
  expect(finding).toMatchObject({ severity: 'error', facts: { what, beyond }, places: [{ part: 'plank' }] })
  expect(finding.places[0]!.feature).toBe(/: (\w+)/.exec(cut)![1])
  expect(finding.measured!.value).toBeCloseTo(by, 9)
  expect([finding.facts.count.value, finding.facts.of.value]).toEqual([count, of])
})

test('a row on the part is not found, nor is a single hole', () => {
  const row = 'row: posts, at: { left: 10, bottom: 20 }, toward: right, spacing: 20, count: 5, diameter: 4'
  const hole = 'hole: pin, at: { left: 0, bottom: 5 }, diameter: 4'
  expect(found(rowOffPart, planWithCuts([row, hole]))).toEqual([])
})

/** Common practice, no source: a spacing is misread by up to 1/32 in. */
test.each<[row: string, first: number, last: number, even: number]>([
  // 10 + 4·20.5 = 92, 8 to the end
  ['at: { left: 10, bottom: 20 }, toward: right, spacing: 20.5, count: 5', 10, 8, 20],
  ['at: { left: 10, bottom: 20 }, toward: right, spacing: 19.5, count: 5', 10, 12, 20],
  ['at: { right: 10, bottom: 20 }, toward: left, spacing: 20.5, count: 5', 10, 8, 20],
  ['at: { left: 50, bottom: 10 }, toward: top, spacing: 10.5, count: 3', 10, 9, 10],
  ['on: top, at: { left: 5, front: center }, toward: right, spacing: 8.9, count: 11', 5, 6, 9],
])('{ %s } misses the middle by a little', (row, first, last, even) => {
  const finding = only(rowUneven, planWithCuts([`row: posts, ${row}, diameter: 2`]))
  expect(finding.severity).toBe('warning')
  expect(finding.measured!.value).toBeCloseTo(Math.abs(first - last), 9)
  expect(finding.facts.first.value).toBeCloseTo(first, 9)
  expect(finding.facts.last.value).toBeCloseTo(last, 9)
  expect(finding.facts.even.value).toBeCloseTo(even, 9)
})

test.each([
  'at: { left: 10, bottom: 20 }, toward: right, spacing: 20, count: 5',
  'at: { left: center, bottom: 20 }, toward: right, spacing: 20.5, count: 5',
  // plainly meant so
  'at: { left: 10, bottom: 20 }, toward: right, spacing: 10, count: 5',
  'at: { left: 10, bottom: 20 }, toward: right, spacing: 22, count: 5',
  // where it runs off, that is the fault
  'at: { left: 10, bottom: 20 }, toward: right, spacing: 30, count: 5',
])('{ %s } is not a little uneven', row => {
  expect(found(rowUneven, planWithCuts([`row: posts, ${row}, diameter: 2`]))).toEqual([])
})
