import { expect, test } from 'vitest'
import { featuresMeet } from '../../../src/check/wood/features-meet.ts'
import { holeNearEdge } from '../../../src/check/wood/hole-near-edge.ts'
import { outsidePart } from '../../../src/check/wood/outside-part.ts'
import { tooDeep } from '../../../src/check/wood/too-deep.ts'
import { wallTooThin } from '../../../src/check/wood/wall-too-thin.ts'
import { planWithCuts } from '../../model/model-of.ts'
import { found, only } from '../found.ts'

const tan = (angle: number) => Math.tan((angle * Math.PI) / 180)

/** 100 x 40 x 20. What is left under the floor, against 1/16 in. Common practice, no source. */
test.each<[cut: string, left: number, severity: string]>([
  ['groove: a, at: { bottom: 10 }, width: 4, depth: 19', 1, 'warning'],
  ['groove: a, on: top, at: { front: 8 }, width: 4, depth: 40', 0, 'error'],
  ['rebate: a, on: back, edge: left, size: 6 x 19', 1, 'warning'],
  ['rebate: a, on: left, edge: front, size: 20 x 6', 0, 'error'],
  ['chamfer: a, edges: top, size: 2 x 19.5', 0.5, 'warning'],
  ['round-over: a, edges: all, radius: 19', 1, 'warning'],
])('the floor of what is as deep as the wood comes out: %s', (cut, left, severity) => {
  const finding = only(tooDeep, planWithCuts([cut]))
  expect(finding).toMatchObject({ severity, measured: { value: expect.closeTo(left, 9) } })
  expect(finding.facts.what).toBe(cut.split(':')[0])
})

/** Beside a slot or groove 1/16 in (1.5875 mm), beside a hole its diameter. Common practice, no source. */
test.each<[what: string, cuts: readonly string[], measured: number, limit: number]>([
  ['a groove and the edge it runs beside', ['groove: a, at: { bottom: 1 }, width: 4, depth: 6'], 1, 1.5875],
  [
    'a stopped groove and the end',
    ['groove: a, at: { bottom: 9 }, width: 4, depth: 6, stopped: { left: 1 }'],
    1,
    1.5875,
  ],
  ['a groove in an end', ['groove: a, on: left, at: { front: 1 }, width: 4, depth: 6'], 1, 1.5875],
  [
    'two grooves side by side',
    ['groove: a, at: { bottom: 9 }, width: 4, depth: 6', 'groove: b, at: { bottom: 14 }, width: 4, depth: 6'],
    1,
    1.5875,
  ],
  [
    'a rebate and a groove',
    ['rebate: a, edge: bottom, size: 5 x 6', 'groove: b, at: { bottom: 6 }, width: 4, depth: 6'],
    1,
    1.5875,
  ],
  [
    'a hole beside a groove',
    [
      'groove: a, at: { bottom: 9 }, width: 4, depth: 6',
      'hole: b, at: { left: 50, bottom: 18 }, diameter: 6',
    ],
    2,
    6,
  ],
  [
    'a slot beside a bevel that comes nearest at the back',
    // the back is 20·tan 15° shorter, and the slot goes through
    ['bevel: a, on: right, angle: 15, short: back', 'slot: b, at: { right: 6, bottom: 10 }, size: 10 x 6'],
    6 - 20 * tan(15),
    1.5875,
  ],
])('wood that is too thin between %s', (_, cuts, measured, limit) => {
  const finding = only(wallTooThin, planWithCuts(cuts))
  expect(finding.measured!.value).toBeCloseTo(measured, 9)
  expect(finding.limit!.value).toBeCloseTo(limit, 9)
})

test.each([
  [
    'grooves that cross',
    ['groove: a, at: { bottom: 9 }, width: 4, depth: 6', 'groove: b, at: { left: 9 }, width: 4, depth: 6'],
  ],
  [
    'rebates that meet at a corner',
    ['rebate: a, edge: bottom, size: 5 x 6', 'rebate: b, edge: left, size: 5 x 6'],
  ],
  [
    'a groove over a notch',
    [
      'groove: a, at: { bottom: 9 }, width: 4, depth: 6',
      'notch: b, on: right, at: { top: 0 }, size: 40 x 10',
    ],
  ],
  [
    'a mortise in a groove',
    [
      'groove: a, at: { bottom: 9 }, width: 4, depth: 6',
      'slot: b, at: { left: 30, bottom: 9 }, size: 20 x 4, depth: 12',
    ],
  ],
  [
    'a groove out through a bevel',
    ['bevel: a, on: right, angle: 30, short: front', 'groove: b, at: { bottom: 9 }, width: 4, depth: 6'],
  ],
  ['edges eased all round both faces', ['chamfer: a, on: [front, back], edges: all, size: 2']],
  [
    'two bevels at a corner',
    ['bevel: a, on: right, angle: 30, short: front', 'bevel: b, on: top, angle: 30, short: back'],
  ],
  [
    'a stopped hole that lies before the slope',
    [
      'bevel: a, on: right, angle: 45, short: back',
      'hole: b, at: { right: 11, bottom: 20 }, diameter: 4, depth: 5',
    ],
  ],
  [
    'a groove beside a slanting end',
    ['groove: a, at: { bottom: 9 }, width: 4, depth: 6', 'bevel: b, on: left, angle: 45, short: back'],
  ],
])('%s are no fault', (_, cuts) => {
  const text = planWithCuts(cuts)
  expect(found(featuresMeet, text)).toEqual([])
  expect(found(wallTooThin, text)).toEqual([])
  expect(found(holeNearEdge, text)).toEqual([])
  expect(found(outsidePart, text)).toEqual([])
})

test.each<[what: string, cuts: readonly string[], severity: string, how: string, overlap: number]>([
  [
    'a hole over the side of a groove',
    [
      'groove: a, at: { bottom: 9 }, width: 4, depth: 6',
      'hole: b, at: { left: 50, bottom: 14 }, diameter: 6',
    ],
    'warning',
    'overlaps',
    2,
  ],
  [
    'a hole over the line of a rebate',
    ['rebate: a, edge: top, size: 8 x 6', 'hole: b, at: { left: 50, top: 9 }, diameter: 6'],
    'warning',
    'overlaps',
    2,
  ],
  [
    'grooves that lie over each other',
    ['groove: a, at: { bottom: 9 }, width: 4, depth: 6', 'groove: b, at: { bottom: 12 }, width: 4, depth: 6'],
    'note',
    'overlaps',
    1,
  ],
  [
    'a hole that comes out in the slope of a bevel',
    ['bevel: a, on: right, angle: 45, short: back', 'hole: b, at: { right: 21, bottom: 20 }, diameter: 6'],
    'warning',
    'overlaps',
    2,
  ],
  [
    'the same from a part of the way down',
    // 15 deep of 20, the slope has taken 15 of the end there
    [
      'bevel: a, on: right, angle: 45, short: back',
      'hole: b, at: { right: 16, bottom: 20 }, diameter: 6, depth: 15',
    ],
    'warning',
    'overlaps',
    2,
  ],
  [
    'a hole whose rim runs into a chamfer',
    ['chamfer: a, edges: top, size: 6', 'hole: b, at: { left: 50, top: 8 }, diameter: 6'],
    'warning',
    'overlaps',
    1,
  ],
  [
    'an arris that is chamfered and rounded',
    ['chamfer: a, edges: top, size: 2', 'round-over: b, edges: all, radius: 3'],
    'note',
    'overlaps',
    2,
  ],
])('%s', (_, cuts, severity, how, overlap) => {
  const finding = only(featuresMeet, planWithCuts(cuts))
  expect(finding).toMatchObject({ severity, facts: { how } })
  expect(finding.measured!.value).toBeCloseTo(overlap, 9)
})

/** From the slope at the depth where the hole comes nearest to it. A round-over's slope is the quarter circle. */
test.each<[cuts: readonly string[], edge: string, clear: number]>([
  [['chamfer: a, edges: top, size: 6', 'hole: b, at: { left: 50, top: 11 }, diameter: 6'], 'chamfer', 2],
  [
    [
      'bevel: a, on: right, angle: 30, short: back',
      'hole: b, at: { right: 14, bottom: 20 }, diameter: 6, depth: 15',
    ],
    'bevel',
    14 - 3 - 15 * tan(30),
  ],
  [
    [
      'round-over: a, on: back, edges: all, radius: 6',
      'hole: b, at: { left: 50, top: 9 }, diameter: 6, depth: 17',
    ],
    'round-over',
    6 - (6 - Math.sqrt(36 - 9)),
  ],
])('a hole near a slope: %s', (cuts, edge, clear) => {
  const finding = only(holeNearEdge, planWithCuts(cuts))
  expect(finding.facts.edge).toBe(edge)
  expect(finding.measured!.value).toBeCloseTo(clear, 9)
})

test.each<[cut: string, by: number, beyond: string]>([
  ['groove: a, at: { bottom: -1 }, width: 4, depth: 6', 1, 'bottom'],
  ['groove: a, on: top, at: { front: -2 }, width: 4, depth: 6', 2, 'front'],
  ['engrave: a, lines: [[[10, 10], [103, 10]]]', 3, 'right'],
  ['engrave: a, on: top, lines: [[[10, 10], [10, 24]]]', 4, 'back'],
  ['engrave: a, at: { left: 10, top: -2 }, text: Pier, height: 5', 2, 'top'],
])('what leaves its face is told: %s', (cut, by, beyond) => {
  const finding = only(outsidePart, planWithCuts([cut]))
  expect(finding.measured!.value).toBeCloseTo(by, 9)
  expect(finding.facts.beyond).toBe(beyond)
})
