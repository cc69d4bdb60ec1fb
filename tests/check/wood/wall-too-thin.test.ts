import fc from 'fast-check'
import { expect, test } from 'vitest'
import { subjectOf } from '../../../src/check/subject/subject.ts'
import { nearPairs } from '../../../src/check/wood/pairs.ts'
import { wallTooThin } from '../../../src/check/wood/wall-too-thin.ts'
import { defaultWorkshop } from '../../../src/workshop/defaults.ts'
import { modelOf, planWithCuts } from '../../model/model-of.ts'
import { found, only } from '../found.ts'

/** Common practice, no source: between holes as beside a hole; beside a slot or cut-out 1/16 in (1.5875 mm). */
test.each<[what: string, cuts: readonly string[], measured: number, limit: number, severity: string]>([
  [
    'two holes',
    [
      'hole: a, at: { left: 40, bottom: 20 }, diameter: 6',
      'hole: b, at: { left: 50, bottom: 20 }, diameter: 4',
    ],
    5,
    6,
    'warning',
  ],
  [
    'a row too close',
    ['row: posts, at: { left: 20, bottom: 20 }, toward: right, spacing: 7, count: 8, diameter: 5'],
    2,
    5,
    'error',
  ],
  [
    'a hole and a slot',
    [
      'slot: mouth, at: { left: 40, bottom: 15 }, size: 20 x 10',
      'hole: pin, at: { left: 64, bottom: 20 }, diameter: 4',
    ],
    2,
    4,
    'warning',
  ],
  [
    'a hole at the corner of a slot',
    // from (60, 25) to the centre (63, 29) it is 5
    [
      'slot: mouth, at: { left: 40, bottom: 15 }, size: 20 x 10',
      'hole: pin, at: { left: 63, bottom: 29 }, diameter: 4',
    ],
    3,
    4,
    'warning',
  ],
  ['a slot and the edge', ['slot: mouth, at: { left: 40, bottom: 1 }, size: 20 x 10'], 1, 1.5875, 'warning'],
  [
    'a cut-out and the end',
    ['cut-out: window, at: { right: 0.5, bottom: center }, size: 20 x 10'],
    0.5,
    1.5875,
    'error',
  ],
  [
    'two slots side by side',
    [
      'slot: a, at: { left: 10, bottom: 15 }, size: 20 x 10',
      'slot: b, at: { left: 31, bottom: 15 }, size: 20 x 10',
    ],
    1,
    1.5875,
    'warning',
  ],
])('%s', (_, cuts, measured, limit, severity) => {
  const finding = only(wallTooThin, planWithCuts(cuts))
  expect(finding.severity).toBe(severity)
  expect(finding.measured!.value).toBeCloseTo(measured, 9)
  expect(finding.limit!.value).toBeCloseTo(limit, 9)
})

test.each<[what: string, cuts: readonly string[]]>([
  [
    'a diameter of wood',
    [
      'hole: a, at: { left: 40, bottom: 20 }, diameter: 6',
      'hole: b, at: { left: 52, bottom: 20 }, diameter: 6',
    ],
  ],
  ['a slot that is open at the end', ['slot: mouth, at: { left: 0, bottom: 15 }, size: 20 x 10']],
  [
    'stopped holes from front and back',
    [
      'hole: here, at: { left: 50, bottom: 20 }, diameter: 6, depth: 8',
      'hole: there, on: back, at: { left: 57, bottom: 20 }, diameter: 6, depth: 8',
    ],
  ],
])('%s: nothing is found', (_, cuts) => {
  expect(found(wallTooThin, planWithCuts(cuts))).toEqual([])
})

test('a row is said once, with how many of its walls are thin', () => {
  const row = 'row: posts, at: { left: 20, bottom: 20 }, toward: right, spacing: 7, count: 8, diameter: 5'
  expect(only(wallTooThin, planWithCuts([row])).facts.count).toEqual({ value: 7, unit: 'count' })
})

test('the sweep finds the pairs that comparing all with all finds', () => {
  const hole = fc.record({ x: fc.integer({ min: 5, max: 95 }), y: fc.integer({ min: 5, max: 35 }) })
  fc.assert(
    fc.property(
      fc.array(hole, { minLength: 2, maxLength: 25 }),
      fc.integer({ min: 0, max: 20 }),
      (holes, reach) => {
        const text = planWithCuts(
          holes.map(({ x, y }, i) => `hole: h${i}, at: { left: ${x}, bottom: ${y} }, diameter: 3`),
        )
        const { cuts } = subjectOf(modelOf(text), defaultWorkshop).parts[0]!.planes[0]!
        const near = (a: number, b: number) =>
          Math.abs(holes[a]!.x - holes[b]!.x) - 3 <= reach && Math.abs(holes[a]!.y - holes[b]!.y) - 3 <= reach
        const wanted = holes.flatMap((_, a) =>
          holes.flatMap((_, b) => (a < b && near(a, b) ? [`h${a} h${b}`] : [])),
        )
        const swept = nearPairs(cuts, reach).map(([a, b]) => `${a.feature.id} ${b.feature.id}`)
        expect(swept).toEqual(wanted)
      },
    ),
  )
})
