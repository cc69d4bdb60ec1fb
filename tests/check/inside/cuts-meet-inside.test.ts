import { expect, test } from 'vitest'
import { cutsMeetInside } from '../../../src/check/inside/cuts-meet-inside.ts'
import { wallInside } from '../../../src/check/inside/wall-inside.ts'
import { planWithCuts } from '../../model/model-of.ts'
import { found, only } from '../found.ts'

const plan = (...cuts: string[]) => planWithCuts(cuts, '100 x 40 x 30')
/** From the top, 10 wide in the middle of the thickness, from 10 to 20 below the front. */
const fromTop = (depth: number, left = 30) =>
  `slot: above, on: top, at: { left: ${left}, front: 10 }, size: 20 x 10, depth: ${depth}`
/** From the front, from 15 to 25 above the bottom. */
const fromFront = (depth: number, left = 30) =>
  `slot: face, at: { left: ${left}, bottom: 15 }, size: 20 x 10, depth: ${depth}`

/** On 100 x 40 x 30; how far the two reach into each other, and what is left between them, by hand. */
test('two mortises from two faces of a post meet, by how far', () => {
  // 25 down from the top leaves 15; the other reaches from 15 to 25
  const finding = only(cutsMeetInside, plan(fromTop(18), fromFront(20)))
  expect(finding).toMatchObject({
    severity: 'note',
    facts: { what: 'slot', other: 'slot', count: { value: 1 } },
    places: [{ feature: 'above' }, { feature: 'face' }],
  })
  // the floor of the one is 22 above the bottom, and the other begins at 25
  expect(finding.measured!.value).toBeCloseTo(3, 6)
})

test.each([
  ['beside each other along the part', [fromTop(25, 30), fromFront(20, 51)], 1],
  ['one ends before the other', [fromTop(14), fromFront(20)], 1],
  ['one passes behind the other', [fromTop(30), fromFront(9)], 1],
])('%s: a thin wall', (_, cuts, left) => {
  expect(found(cutsMeetInside, plan(...cuts))).toEqual([])
  const finding = only(wallInside, plan(...cuts))
  expect(finding).toMatchObject({
    severity: 'warning',
    facts: { what: 'slot', other: 'slot', between: 'beside' },
  })
  expect(finding.measured!.value).toBeCloseTo(left, 5)
  expect(finding.limit!.value).toBeCloseTo(25.4 / 16, 9)
})

test('floors of cuts from front and back are held against each other', () => {
  const cuts = (depth: number) => [
    'groove: here, at: { bottom: 10 }, width: 8, depth: 14',
    `slot: there, on: back, at: { left: 30, bottom: 5 }, size: 8 x 20, depth: ${depth}`,
  ]
  expect(only(wallInside, plan(...cuts(15))).measured!.value).toBeCloseTo(1, 5)
  expect(found(wallInside, plan(...cuts(14)))).toEqual([])
})

test.each([
  ['apart', [fromTop(13), fromFront(20)]],
  [
    'of one face, which another rule sees',
    [fromFront(20), 'slot: two, at: { left: 40, bottom: 18 }, size: 20 x 4, depth: 9'],
  ],
  [
    'a groove and a rebate that cross at a corner',
    [
      'groove: g, on: top, at: { front: center }, width: 8, depth: 10',
      'rebate: r, on: front, edge: left, size: 12 x 14',
    ],
  ],
  [
    'a groove that runs out over a chamfer',
    ['groove: g, at: { bottom: 10 }, width: 8, depth: 5', 'chamfer: c, on: front, edges: all, size: 4'],
  ],
  [
    'one that ends in a notch',
    [
      'notch: step, on: top, at: { left: 25 }, size: 30 x 20',
      'slot: in-the-air, on: top, at: { left: 30, front: 10 }, size: 20 x 10, depth: 15',
      'slot: face, at: { left: 30, bottom: 26 }, size: 20 x 10, depth: 20',
    ],
  ],
])('%s: left alone', (_, cuts) => {
  expect(found(cutsMeetInside, plan(...cuts))).toEqual([])
  expect(found(wallInside, plan(...cuts))).toEqual([])
})

test('a groove and a rebate that run side by side and meet do not do so on purpose', () => {
  const cuts = [
    'groove: g, on: top, at: { front: 6 }, width: 8, depth: 10',
    'rebate: r, on: front, edge: top, size: 12 x 9',
  ]
  const finding = only(cutsMeetInside, plan(...cuts))
  expect(finding.facts).toMatchObject({ what: 'groove', other: 'rebate' })
  expect(finding.measured!.value).toBeCloseTo(3, 6)
})
