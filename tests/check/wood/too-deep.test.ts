import { expect, test } from 'vitest'
import { tooDeep } from '../../../src/check/wood/too-deep.ts'
import { defaultWorkshop } from '../../../src/workshop/defaults.ts'
import { planOf, planWithCuts } from '../../model/model-of.ts'
import { found, only } from '../found.ts'

/** The point of a twist drill of 118°, by calculation 0.30043 diameters. */
const point = (diameter: number) => diameter / 2 / Math.tan((59 * Math.PI) / 180)

/** On 100 x 40 x 20; 1/16 in (1.5875 mm) is wanted under the point (common practice, no source). */
test.each<[cut: string, left: number, severity: string]>([
  ['hole: pin, at: center, diameter: 10, depth: 16', 20 - 16 - point(10), 'warning'],
  ['hole: pin, at: center, diameter: 10, depth: 17', 20 - 17 - point(10), 'error'],
  ['hole: pin, at: center, diameter: 10, depth: 20', -point(10), 'error'],
  [
    'hole: pin, on: top, at: { left: 50, front: center }, diameter: 6, depth: 37',
    40 - 37 - point(6),
    'warning',
  ],
  ['hole: pin, on: left, at: { bottom: 20, front: center }, diameter: 6, depth: 100', -point(6), 'error'],
  ['slot: mouth, at: center, size: 30 x 8, depth: 19', 1, 'warning'],
  ['slot: mouth, at: center, size: 30 x 8, depth: 20', 0, 'error'],
])('{ %s } leaves %d mm', (cut, left, severity) => {
  const finding = only(tooDeep, planWithCuts([cut]))
  expect(finding.severity).toBe(severity)
  expect(finding.measured!.value).toBeCloseTo(left, 9)
  expect(finding.limit!.value).toBeCloseTo(25.4 / 16, 9)
})

test.each([
  'hole: pin, at: center, diameter: 10',
  'hole: pin, at: center, diameter: 10, depth: 15',
  'hole: pin, on: top, at: { left: 50, front: center }, diameter: 6, depth: 36',
  'slot: mouth, at: center, size: 30 x 8, depth: 18',
  // where there is no wood, another rule speaks
  'hole: pin, at: { left: -30, bottom: 20 }, diameter: 10, depth: 5',
])('{ %s } is not too deep', cut => {
  expect(found(tooDeep, planWithCuts([cut]))).toEqual([])
})

test('a flat bit has no point', () => {
  const flat = { ...defaultWorkshop, bits: { ...defaultWorkshop.bits, point: 'flat' as const } }
  expect(found(tooDeep, planWithCuts(['hole: pin, at: center, diameter: 10, depth: 16']), flat)).toEqual([])
})

test('over a notch there is less wood than the part is wide', () => {
  const cuts = [
    'notch: step, on: bottom, at: { left: 40 }, size: 20 x 15',
    'hole: pin, on: top, at: { left: 50, front: center }, diameter: 4, depth: 24',
  ]
  // 40 − 15 − 24 − the point
  expect(only(tooDeep, planWithCuts(cuts)).measured!.value).toBeCloseTo(1 - point(4), 9)
})

test('under an arc there is as much wood as the arc leaves', () => {
  const text = `paperjig: 1
title: Loom
units: mm
parts:
  wheel:
    round: 100
    thickness: 20
    cuts:
      - { hole: spoke, on: left, at: { bottom: center, front: center }, diameter: 6, depth: 98 }
`
  expect(only(tooDeep, text).measured!.value).toBeCloseTo(2 - point(6), 9)
})

test('a row is said once', () => {
  const row =
    'row: posts, on: top, at: { left: 10, front: center }, toward: right, spacing: 20, count: 5, diameter: 5, depth: 39'
  const finding = only(tooDeep, planOf(`    cuts: [{ ${row} }]\n`))
  expect(finding.places[0]!.feature).toBe('posts')
})

/** On 100 x 40 x 20, and on a plate of 2 mm, where half of it is enough. Common practice, no source. */
test.each<[what: string, cut: string, size: string, left: number, limit: number, severity: string]>([
  [
    'as deep as the board',
    'at: center, text: Pier, height: 8, depth: 20',
    '100 x 40 x 20',
    0,
    1.5875,
    'error',
  ],
  ['deeper', 'at: center, text: Pier, height: 8, depth: 21', '100 x 40 x 20', -1, 1.5875, 'error'],
  ['with little left', 'lines: [[[10, 10], [90, 10]]], depth: 19', '100 x 40 x 20', 1, 1.5875, 'warning'],
  [
    'on the back',
    'on: back, lines: [[[10, 10], [90, 10]]], depth: 19',
    '100 x 40 x 20',
    1,
    1.5875,
    'warning',
  ],
  [
    'into an edge',
    'on: top, at: center, text: Pier, height: 8, depth: 39',
    '100 x 40 x 20',
    1,
    1.5875,
    'warning',
  ],
  ['in a thin plate', 'at: center, text: Pier, height: 8, depth: 1.5', '100 x 40 x 2', 0.5, 1, 'warning'],
])('an engraving %s', (_, cut, size, left, limit, severity) => {
  const finding = only(tooDeep, planWithCuts([`engrave: e, ${cut}`], size))
  expect(finding).toMatchObject({ severity, facts: { what: 'engraving' } })
  expect(finding.measured!.value).toBeCloseTo(left, 9)
  expect(finding.limit!.value).toBeCloseTo(limit, 9)
})

test.each([
  ['at: center, text: Pier, height: 8', '100 x 40 x 2'],
  ['at: center, text: Pier, height: 8, depth: 1', '100 x 40 x 2'],
  ['lines: [[[10, 10], [90, 10]]], depth: 18', '100 x 40 x 20'],
])('an engraving { %s } on %s is not too deep', (cut, size) => {
  expect(found(tooDeep, planWithCuts([`engrave: e, ${cut}`], size))).toEqual([])
})

test('a drawing of several lines is said once, where the wood is thinnest', () => {
  const cuts = [
    'notch: step, on: bottom, at: { left: 40 }, size: 20 x 15',
    'engrave: e, on: top, lines: [[[10, 5], [30, 5]], [[45, 5], [55, 5]]], depth: 24.5',
  ]
  expect(only(tooDeep, planWithCuts(cuts)).measured!.value).toBeCloseTo(0.5, 9)
})
