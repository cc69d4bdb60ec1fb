import { expect, test } from 'vitest'
import { exitOnFeature } from '../../../src/check/inside/exit-on-feature.ts'
import { wallInside } from '../../../src/check/inside/wall-inside.ts'
import { pinHoleDepth } from '../../../src/check/joint/pin-hole-depth.ts'
import { rowOffPart } from '../../../src/check/row/row-off-part.ts'
import { bitMissing } from '../../../src/check/shop/bit-missing.ts'
import { featuresMeet } from '../../../src/check/wood/features-meet.ts'
import { holeNearEdge } from '../../../src/check/wood/hole-near-edge.ts'
import { outsidePart } from '../../../src/check/wood/outside-part.ts'
import { tooDeep } from '../../../src/check/wood/too-deep.ts'
import { wallTooThin } from '../../../src/check/wood/wall-too-thin.ts'
import { planWithCuts } from '../../model/model-of.ts'
import { found, only } from '../found.ts'

/** At 60° an ellipse is twice as long along its sight line as it is wide; the lean stays just under it. */
const steep = (side: string) => `lean: { toward: ${side}, angle: 59.999999 }`

/** The ellipse is followed within 0.0005 mm, and the lean is a millionth of a degree short of 60°. */
const digits = 2

/** On 100 x 40 x 20; a hole of 6 that leans 60° is 12 long on its face. */
test('a hole that leans toward an edge is nearer to it than one that stands', () => {
  const finding = only(
    holeNearEdge,
    planWithCuts([`hole: pin, at: { left: 8, bottom: 20 }, diameter: 6, ${steep('right')}`]),
  )
  expect(finding).toMatchObject({ facts: { edge: 'left' }, severity: 'error' })
  expect(finding.measured!.value).toBeCloseTo(8 - 6, digits)
})

test('a hole that leans along an edge is as near to it as one that stands', () => {
  const finding = only(
    holeNearEdge,
    planWithCuts([`hole: pin, at: { left: 8, bottom: 20 }, diameter: 6, ${steep('top')}`]),
  )
  expect(finding).toMatchObject({ facts: { edge: 'left' }, severity: 'warning' })
  expect(finding.measured!.value).toBeCloseTo(5, digits)
})

test('a countersink or a counterbore is measured to its own rim', () => {
  for (const mouth of ['countersink: 10', 'counterbore: 10 x 3']) {
    const finding = only(
      holeNearEdge,
      planWithCuts([`hole: pin, at: { left: 8, bottom: 20 }, diameter: 6, ${mouth}`]),
    )
    expect(finding.measured!.value).toBeCloseTo(3, 9)
    expect(finding.limit!.value).toBeCloseTo(6, 9)
  }
})

test('an ellipse, or a mouth, that sticks out of the part is found by how far', () => {
  const ellipse = `hole: pin, at: { left: 4, bottom: 20 }, diameter: 6, ${steep('left')}`
  const mouth = 'hole: pin, at: { left: 4, bottom: 20 }, diameter: 6, countersink: 12'
  for (const cut of [ellipse, mouth]) {
    const finding = only(outsidePart, planWithCuts([cut]))
    expect(finding.facts).toEqual({ what: 'hole', beyond: 'left' })
    expect(finding.measured!.value).toBeCloseTo(2, digits)
    expect(found(holeNearEdge, planWithCuts([cut]))).toEqual([])
  }
  const row = `row: pins, at: { left: 4, bottom: 20 }, toward: right, spacing: 30, count: 2, diameter: 6, ${steep('left')}`
  expect(only(rowOffPart, planWithCuts([row])).measured!.value).toBeCloseTo(2, digits)
})

test('leaning holes of one face meet where their ellipses do', () => {
  const pair = (apart: number, side: string) =>
    planWithCuts([
      `hole: one, at: { left: 40, bottom: 20 }, diameter: 6, ${steep(side)}`,
      `hole: two, at: { left: ${40 + apart}, bottom: 20 }, diameter: 6`,
    ])
  const meeting = only(featuresMeet, pair(8, 'right'))
  expect(meeting).toMatchObject({ severity: 'error', facts: { how: 'overlaps' } })
  expect(meeting.measured!.value).toBeCloseTo(1, digits)
  expect(found(featuresMeet, pair(8, 'top'))).toEqual([])
  expect(only(wallTooThin, pair(10, 'right')).measured!.value).toBeCloseTo(1, digits)
  expect(only(wallTooThin, pair(10, 'top')).measured!.value).toBeCloseTo(4, digits)
})

test('what comes from the other face meets a leaning hole inside the wood, and no face tells', () => {
  const leaning = `hole: one, at: { left: 40, bottom: 20 }, diameter: 6, ${steep('right')}`
  const behind = (depth: string) => `hole: two, on: back, at: { left: 43, bottom: 20 }, diameter: 6${depth}`
  // seen through the wood they lie on each other, but the one is somewhere else when the other ends
  expect(found(featuresMeet, planWithCuts([leaning, behind(', depth: 6')]))).toEqual([])
  expect(found(featuresMeet, planWithCuts([leaning, behind('')]))).toEqual([])
  expect(only(exitOnFeature, planWithCuts([leaning, behind('')])).facts.face).toBe('front')
})

/** Source: the mouth of 10 about a hole 11 off one of 4 leaves 11 − 5 − 2. */
test('the wall beside a mouth is measured to its rim', () => {
  const text = planWithCuts([
    'hole: one, at: { left: 40, bottom: 20 }, diameter: 5, counterbore: 10 x 3',
    'hole: two, at: { left: 51, bottom: 20 }, diameter: 4',
  ])
  expect(only(wallTooThin, text).measured!.value).toBeCloseTo(4, 9)
})

const radians = (degrees: number) => (degrees * Math.PI) / 180

/** On a part 20 thick. */
test.each<[cut: string, left: number]>([
  // its point: 20 − (14 + 5 / tan 67.5°)
  ['diameter: 10, depth: 17, bit: { point: twist, angle: 135 }', 3 - 5 / Math.tan(radians(67.5))],
  ['diameter: 10, depth: 19, bit: flat', 1],
  ['diameter: 10, depth: 18, bit: brad', 2 - 25.4 / 16],
  // straight in, a leaning hole goes less deep: the point of its bit, or the rim of its floor
  [
    'diameter: 2, depth: 20, bit: { point: twist, angle: 60 }, lean: { toward: right, angle: 20 }',
    20 - (20 + 1 / Math.tan(radians(30))) * Math.cos(radians(20)),
  ],
  [
    'diameter: 10, depth: 20, bit: flat, lean: { toward: right, angle: 30 }',
    20 - 20 * Math.cos(radians(30)) - 5 * Math.sin(radians(30)),
  ],
])('of { %s } is left under its own bit %d mm', (cut, left) => {
  const finding = only(tooDeep, planWithCuts([`hole: pin, at: center, ${cut}`]))
  expect(finding.measured!.value).toBeCloseTo(left, 9)
  const { depth, point, available } = finding.facts
  expect(available.value - depth.value - point.value).toBeCloseTo(left, 9)
})

test('a leaning hole may be longer than the part is thick', () => {
  const cut = 'hole: pin, at: center, diameter: 4, depth: 21, bit: flat, lean: { toward: right, angle: 45 }'
  expect(found(tooDeep, planWithCuts([cut]))).toEqual([])
})

test('from an end a leaning hole has the wood under its floor, not under its mouth', () => {
  const cuts = ['notch: step, on: right, at: { bottom: 0 }, size: 20 x 60']
  const hole = (side: string) =>
    `hole: pin, on: left, at: { bottom: 20, front: center }, diameter: 4, depth: 45, bit: flat, lean: { toward: ${side}, angle: 20 }`
  // toward the top the bit goes down, to where the step leaves 40 of wood
  const finding = only(tooDeep, planWithCuts([...cuts, hole('top')]))
  expect(finding.facts.available.value).toBeCloseTo(40, 9)
  expect(found(tooDeep, planWithCuts([...cuts, hole('bottom')]))).toEqual([])
})

test('under a counterbore there is wood to bear the head', () => {
  const finding = only(tooDeep, planWithCuts(['hole: bolt, at: center, diameter: 5, counterbore: 10 x 19']))
  expect(finding).toMatchObject({ severity: 'warning', facts: { what: 'counterbore', depth: { value: 19 } } })
  expect(finding.measured!.value).toBeCloseTo(1, 9)
  expect(found(tooDeep, planWithCuts(['hole: bolt, at: center, diameter: 5, counterbore: 10 x 10']))).toEqual(
    [],
  )
})

test('a counterbore wants a bit of its own', () => {
  const text = planWithCuts([
    'row: bolts, at: { left: 20, bottom: 20 }, toward: right, spacing: 20, count: 3, diameter: 5, counterbore: 11.3 x 4',
  ])
  expect(only(bitMissing, text)).toMatchObject({
    places: [{ feature: 'bolts' }],
    measured: { value: 11.3 },
    facts: { what: 'counterbore', nearest: { value: (7 / 16) * 25.4 } },
  })
  expect(
    found(bitMissing, planWithCuts(['hole: screw, at: center, diameter: 5, countersink: 11.3'])),
  ).toEqual([])
})

/** Source: by Pythagoras; through 20 at 45° the pin lies in 20·√2 of wood. */
test('a pin in a leaning hole has more wood about it', () => {
  const text = `paperjig: 1
title: Pier
units: mm
pins: { rod: { diameter: 6, length: 27, count: 1 } }
parts:
  plank:
    size: 100 x 40 x 20
    cuts: [{ hole: pin, at: center, for: rod, fit: push, lean: { toward: right, angle: 45 } }]
joints: [{ pin: rod, through: [plank.pin] }]
`
  const finding = only(pinHoleDepth, text)
  expect(finding.facts.fault).toBe('short-pin')
  expect(finding.measured!.value).toBeCloseTo(20 * Math.SQRT2, 9)
})

/** On a part 20 thick: a countersink of 90° from 4 to 10 is 3 deep. */
test('a mouth on the back comes near only to what goes as deep', () => {
  const behind = 'hole: screw, on: back, at: { left: 40, bottom: 20 }, diameter: 4, countersink: 10'
  const pin = (depth: string) =>
    planWithCuts([behind, `hole: pin, at: { left: 51, bottom: 20 }, diameter: 4${depth}`])
  // to the hole itself 11 − 2 − 2, to its mouth 11 − 5 − 2
  expect(found(wallTooThin, pin(', depth: 10'))).toEqual([])
  expect(found(wallTooThin, pin(''))).toEqual([])
  const close = (depth: string) =>
    planWithCuts([behind, `hole: pin, at: { left: 48, bottom: 20 }, diameter: 4${depth}`])
  expect(found(wallInside, close(', depth: 16'))).toEqual([])
  // from the rim of its end, 2 before the back, square to the cone: 3 / √2
  expect(found(wallInside, close(', depth: 18'))).toEqual([])
  const mouths = planWithCuts([
    behind,
    'hole: pin, at: { left: 48, bottom: 20 }, diameter: 4, countersink: 10',
  ])
  expect(only(wallInside, mouths).measured!.value).toBeCloseTo(1, 6)
  const beside = planWithCuts([behind, 'hole: pin, at: { left: 46, bottom: 20 }, diameter: 4, depth: 18'])
  expect(found(featuresMeet, beside)).toEqual([])
  expect(only(wallInside, beside).measured!.value).toBeCloseTo(1 / Math.SQRT2, 6)
})
