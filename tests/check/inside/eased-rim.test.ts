import { expect, test } from 'vitest'
import { holeComesOut } from '../../../src/check/inside/hole-comes-out.ts'
import { wallInside } from '../../../src/check/inside/wall-inside.ts'
import { featuresMeet } from '../../../src/check/wood/features-meet.ts'
import { tooDeep } from '../../../src/check/wood/too-deep.ts'
import { wallTooThin } from '../../../src/check/wood/wall-too-thin.ts'
import { planWithCuts } from '../../model/model-of.ts'
import { found, only } from '../found.ts'

const plan = (...cuts: string[]) => planWithCuts(cuts, '100 x 40 x 16')
const rim = 'chamfer: c, on: front, edges: all, size: 4'
const dowel = (front: number, bottom = 20) =>
  `hole: h, on: left, at: { front: ${front}, bottom: ${bottom} }, diameter: 4, depth: 20`

/** Source: by trigonometry, a slope of 45° from 4 mm down the end to 4 mm in on the front; a rim 2 mm about its centre. */
test('a hole in an end runs into the chamfer round the front as into one of that end alone', () => {
  const single = 'chamfer: c, on: front, edges: [left], size: 4'
  for (const chamfer of [rim, single]) {
    const out = only(holeComesOut, plan(chamfer, dowel(5)))
    expect(out).toMatchObject({
      severity: 'warning',
      facts: { into: 'chamfer' },
      places: [{ feature: 'h' }, { feature: 'c' }],
    })
    // the shortest way out is square to the slope: from the rim, 3 from the front, to the line x + y = 4
    expect(out.measured!.value).toBeCloseTo((4 - 3) / Math.SQRT2, 6)
    const thin = only(wallInside, plan(chamfer, dowel(6.5)))
    expect(thin.facts).toMatchObject({ other: 'chamfer', count: { value: 1 } })
    expect(thin.measured!.value).toBeCloseTo(0.5, 6)
    expect(found(wallInside, plan(chamfer, dowel(7.6)))).toEqual([])
  }
})

test('a hole along an edge is as near to the rim beside it as the slope comes', () => {
  // from the axis, 5 from the front and 6 from the top, to the line x + y = 4 between the two
  const distance = (5 + 6 - 4) / Math.SQRT2 - 4
  const bored = 'hole: h, on: left, at: { front: 5, top: 6 }, diameter: 8, depth: 40, bit: flat'
  const chamfered = 'chamfer: c, on: front, edges: [top, bottom], size: 4'
  const thin = only(wallInside, plan(chamfered, bored))
  expect(thin.measured!.value).toBeCloseTo(distance, 6)
  const rounded = (front: number) => plan('round-over: c, on: front, edges: all, radius: 4', dowel(front))
  expect(only(holeComesOut, rounded(5)).facts.into).toBe('round-over')
  expect(found(holeComesOut, rounded(8))).toEqual([])
})

test('round a disc the rim is followed as it bends', () => {
  const disc = (front: number) => `paperjig: 1
title: Loom
units: mm
parts:
  wheel:
    round: 90
    thickness: 16
    cuts:
      - { chamfer: c, on: [front, back], edges: all, size: 4 }
      - { hole: spoke, on: left, at: { bottom: center, front: ${front} }, diameter: 4, depth: 20 }
`
  expect(only(holeComesOut, disc(5)).facts.into).toBe('chamfer')
  expect(found(holeComesOut, disc(8))).toEqual([])
  expect(found(wallInside, disc(8))).toEqual([])
})

test.each([
  ['round-over: c, on: [front, back], edges: all, radius: 9', 2],
  ['round-over: c, on: [front, back], edges: [top], radius: 9', 2],
  ['chamfer: c, on: [front, back], edges: all, size: 2 x 8.5', 1],
])('{ %s } leaves nothing of the edge', (cut, by) => {
  const finding = only(featuresMeet, plan(cut))
  expect(finding).toMatchObject({ severity: 'warning', facts: { how: 'meets', count: { value: 2 } } })
  expect(finding.measured!.value).toBeCloseTo(by, 9)
})

test.each([
  // a full round: the two quarters meet in the middle of the thickness
  'round-over: c, on: [front, back], edges: all, radius: 8',
  'chamfer: c, on: [front, back], edges: [top, bottom], size: 3',
])('{ %s } is wanted so', cut => {
  expect(found(featuresMeet, plan(cut))).toEqual([])
})

test('two edges that are rounded away are one finding', () => {
  const finding = only(
    featuresMeet,
    plan('round-over: c, on: [front, back], edges: [top, bottom], radius: 9'),
  )
  expect(finding.facts).toMatchObject({ how: 'meets', count: { value: 4 }, names: 'c' })
})

test('a rim that is worked deeper than the part is thick comes out on the other side', () => {
  expect(only(tooDeep, plan('chamfer: c, on: front, edges: all, size: 3 x 16'))).toMatchObject({
    severity: 'error',
  })
  expect(only(tooDeep, plan('round-over: c, on: back, edges: all, radius: 15')).measured!.value).toBeCloseTo(
    1,
    9,
  )
})

test('a slot is held against an eased edge as a hole is', () => {
  const slot = (left: number) => `slot: s, at: { left: ${left}, bottom: 15 }, size: 20 x 8, depth: 6`
  const meets = only(featuresMeet, plan(rim, slot(3)))
  expect(meets).toMatchObject({
    severity: 'note',
    facts: { what: 'slot', other: 'chamfer', how: 'overlaps' },
  })
  expect(meets.measured!.value).toBeCloseTo(1, 9)
  expect(only(wallTooThin, plan(rim, slot(5))).measured!.value).toBeCloseTo(1, 9)
  expect(found(wallTooThin, plan(rim, slot(6)))).toEqual([])
  // from behind it ends 6 mm before the slope begins
  const behind = 'slot: s, on: back, at: { left: 3, bottom: 15 }, size: 20 x 8, depth: 6'
  expect(found(featuresMeet, plan(rim, behind))).toEqual([])
})
