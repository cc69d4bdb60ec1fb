import { expect, test } from 'vitest'
import { featuresMeet } from '../../../src/check/wood/features-meet.ts'
import { planWithCuts } from '../../model/model-of.ts'
import { found, only } from '../found.ts'

const big = 'hole: big, at: { left: 50, bottom: 20 }, diameter: 12'

/** On 100 x 40 x 20; how far the two reach into each other is measured by hand. */
test.each<[what: string, cuts: readonly string[], by: number, how: string, severity: string]>([
  // 6 + 3 − 8
  ['two holes', [big, 'hole: pin, at: { left: 58, bottom: 20 }, diameter: 6'], 1, 'overlaps', 'error'],
  ['rims that touch', [big, 'hole: pin, at: { left: 59, bottom: 20 }, diameter: 6'], 0, 'touches', 'error'],
  [
    'a hole in a hole',
    [big, 'hole: pin, at: { left: 52, bottom: 20 }, diameter: 4'],
    4,
    'lies within',
    'warning',
  ],
  [
    'a hole at the end of a slot',
    [
      'slot: mouth, at: { left: 40, bottom: 15 }, size: 20 x 10',
      'hole: pin, at: { left: 61, bottom: 20 }, diameter: 6',
    ],
    2,
    'overlaps',
    'warning',
  ],
  [
    'a hole inside a slot',
    [
      'slot: mouth, at: { left: 40, bottom: 15 }, size: 20 x 10',
      'hole: pin, at: { left: 50, bottom: 20 }, diameter: 6',
    ],
    6,
    'lies within',
    'warning',
  ],
  [
    'two slots',
    [
      'slot: mouth, at: { left: 40, bottom: 15 }, size: 20 x 10',
      'slot: key, at: { left: 57, bottom: 18 }, size: 20 x 4',
    ],
    3,
    'overlaps',
    'note',
  ],
  [
    'a hole in a notch',
    [
      'notch: step, on: bottom, at: { left: 40 }, size: 20 x 10',
      'hole: pin, at: { left: 50, bottom: 11 }, diameter: 6',
    ],
    2,
    'overlaps',
    'warning',
  ],
  [
    'deep holes from front and back',
    [
      'hole: here, at: { left: 50, bottom: 20 }, diameter: 6, depth: 12',
      'hole: there, on: back, at: { left: 54, bottom: 20 }, diameter: 6, depth: 12',
    ],
    2,
    'overlaps',
    'error',
  ],
])('%s', (_, cuts, by, how, severity) => {
  const finding = only(featuresMeet, planWithCuts(cuts))
  expect(finding).toMatchObject({ severity, facts: { how } })
  expect(finding.measured!.value).toBeCloseTo(by, 9)
  expect(finding.places).toHaveLength(2)
})

test.each<[what: string, cuts: readonly string[]]>([
  ['holes apart', [big, 'hole: pin, at: { left: 60, bottom: 20 }, diameter: 6']],
  [
    'a counterbore: the narrow hole goes deeper',
    ['hole: head, at: center, diameter: 12, depth: 6', 'hole: shank, at: center, diameter: 5'],
  ],
  [
    'a mortise in steps',
    [
      'slot: wide, at: { left: 30, bottom: 10 }, size: 40 x 20, depth: 5',
      'slot: deep, at: { left: 40, bottom: 15 }, size: 20 x 10, depth: 12',
    ],
  ],
  [
    'shallow holes from front and back',
    [
      'hole: here, at: { left: 50, bottom: 20 }, diameter: 6, depth: 9',
      'hole: there, on: back, at: { left: 54, bottom: 20 }, diameter: 6, depth: 9',
    ],
  ],
  [
    'holes in different faces',
    [
      'hole: here, at: { left: 50, bottom: 20 }, diameter: 6',
      'hole: there, on: top, at: { left: 50, front: 10 }, diameter: 6, depth: 5',
    ],
  ],
])('%s are left alone', (_, cuts) => {
  expect(found(featuresMeet, planWithCuts(cuts))).toEqual([])
})

test('the narrow hole of a counterbore on the back is seen through the wood', () => {
  // the back is seen from behind, but left is the part's own left
  const cuts = [
    'hole: head, on: back, at: { left: 20, bottom: 20 }, diameter: 12, depth: 6',
    'hole: shank, at: { left: 20, bottom: 20 }, diameter: 5',
  ]
  expect(found(featuresMeet, planWithCuts(cuts))).toEqual([])
})
