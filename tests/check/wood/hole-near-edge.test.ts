import { expect, test } from 'vitest'
import { holeNearEdge } from '../../../src/check/wood/hole-near-edge.ts'
import { defaultWorkshop } from '../../../src/workshop/defaults.ts'
import { planOf, planWithCuts } from '../../model/model-of.ts'
import { found, only } from '../found.ts'

/**
 * On 100 x 40 x 20. Common practice, no source: one diameter of clear wood, never under 1/32 in (0.79375 mm), and for
 * wide holes no more than 3/8 in (9.525 mm); under half of it the wood breaks out.
 */
test.each<[cut: string, clear: number, limit: number, severity: string, edge: string]>([
  ['hole: pin, at: { left: 8, bottom: 20 }, diameter: 6', 5, 6, 'warning', 'left'],
  ['hole: pin, at: { left: 5.9, bottom: 20 }, diameter: 6', 2.9, 6, 'error', 'left'],
  ['hole: pin, at: { left: 6, bottom: 20 }, diameter: 6', 3, 6, 'warning', 'left'],
  ['hole: pin, at: { left: 50, top: 0.9 }, diameter: 0.5', 0.65, 0.79375, 'warning', 'top'],
  ['hole: pin, at: { left: 50, bottom: 18 }, diameter: 20', 8, 9.525, 'warning', 'bottom'],
  ['hole: pin, at: { left: 3, bottom: 20 }, diameter: 6', 0, 6, 'error', 'left'],
  // a dowel of 9 in an edge of 20: dowels are a third to a half of the thinner stock
  ['hole: pin, on: top, at: { left: 50, front: center }, diameter: 9', 5.5, 9, 'warning', 'front'],
  ['hole: pin, on: right, at: { bottom: 20, front: 5 }, diameter: 4', 3, 4, 'warning', 'front'],
])('{ %s } leaves %d mm', (cut, clear, limit, severity, edge) => {
  const finding = only(holeNearEdge, planWithCuts([cut]))
  expect(finding).toMatchObject({ severity, facts: { edge }, places: [{ part: 'plank', feature: 'pin' }] })
  expect(finding.measured!.value).toBeCloseTo(clear, 9)
  expect(finding.limit!.value).toBeCloseTo(limit, 9)
})

test.each([
  ['one diameter is enough', 'hole: pin, at: { left: 9, bottom: 20 }, diameter: 6'],
  [
    'a third of the thickness in an edge',
    'hole: pin, on: top, at: { left: 50, front: center }, diameter: 6.6',
  ],
  [
    'a hole that sticks out is another rule’s business',
    'hole: pin, at: { left: 2, bottom: 20 }, diameter: 6',
  ],
])('%s', (_, cut) => {
  expect(found(holeNearEdge, planWithCuts([cut]))).toEqual([])
})

test('the edge of a notch is an edge', () => {
  const cuts = [
    'notch: step, on: bottom, at: { left: 40 }, size: 20 x 10',
    'hole: pin, at: { left: 50, bottom: 15 }, diameter: 4',
  ]
  expect(only(holeNearEdge, planWithCuts(cuts)).measured!.value).toBeCloseTo(3, 9)
})

test('an arc is measured as an arc', () => {
  // the corner's centre is (20, 20), its radius 20, and the hole's centre √2·10 from it: 20 − 14.142 − 3 = 2.858
  const text = planOf(
    '    corners: 20\n    cuts: [{ hole: pin, at: { left: 10, bottom: 10 }, diameter: 6 }]\n',
  )
  expect(only(holeNearEdge, text).measured!.value).toBeCloseTo(20 - Math.hypot(10, 10) - 3, 9)
})

test('a row is said once, by its worst hole, with how many there are', () => {
  const row = 'row: posts, at: { left: 10, bottom: 6 }, toward: right, spacing: 20, count: 5, diameter: 5'
  const finding = only(holeNearEdge, planWithCuts([row]))
  expect(finding.facts.count).toEqual({ value: 5, unit: 'count' })
  expect(finding.measured!.value).toBeCloseTo(3.5, 9)
})

test('the limit is the shop’s', () => {
  const cut = planWithCuts(['hole: pin, at: { left: 8, bottom: 20 }, diameter: 6'])
  const bold = { ...defaultWorkshop, clear: { ...defaultWorkshop.clear, diameters: 0.5 } }
  expect(found(holeNearEdge, cut, bold)).toEqual([])
})
