import { expect, test } from 'vitest'
import { exitOnFeature } from '../../../src/check/inside/exit-on-feature.ts'
import { holesMeetInside } from '../../../src/check/inside/holes-meet-inside.ts'
import { wallInside } from '../../../src/check/inside/wall-inside.ts'
import { featuresMeet } from '../../../src/check/wood/features-meet.ts'
import { wallTooThin } from '../../../src/check/wood/wall-too-thin.ts'
import { planWithCuts } from '../../model/model-of.ts'
import { found, only } from '../found.ts'

const block = '100 x 40 x 30'
const plan = (...cuts: string[]) => planWithCuts(cuts, block)

/** A hole along the block, its axis 20 above the bottom and 15 from the front. */
const shaft = 'hole: shaft, on: left, at: { bottom: 20, front: 15 }, diameter: 8'

/**
 * Source: by definition; two round bars that cross are as far apart as their axes less both radii, and a point is as
 * far from a bar as from its axis less the radius.
 */
test('bars that cross reach into each other by their radii less the distance of their axes', () => {
  const finding = only(holesMeetInside, plan(shaft, 'hole: peg, at: { left: 50, bottom: 26 }, diameter: 6'))
  expect(finding.measured!.value).toBeCloseTo(4 + 3 - 6, 6)
  expect(finding).toMatchObject({
    severity: 'error',
    places: [
      { feature: 'shaft', side: 'left', at: { face: 'left' } },
      { feature: 'peg', side: 'front', at: { face: 'front' } },
    ],
  })
  // between the axes, parted as 4 to 3
  expect(finding.facts).toMatchObject({
    end: 'left',
    edge: 'bottom',
    fromEnd: { value: expect.closeTo(50, 9) },
    fromEdge: { value: expect.closeTo(20 + (6 * 4) / 7, 9) },
    fromFront: { value: expect.closeTo(15, 9) },
  })
})

test('two that meet by a hair are found, and two that miss by one are not said to meet', () => {
  const peg = (bottom: number) => `hole: peg, at: { left: 50, bottom: ${bottom} }, diameter: 6`
  expect(only(holesMeetInside, plan(shaft, peg(26.99))).measured!.value).toBeCloseTo(0.01, 6)
  expect(found(holesMeetInside, plan(shaft, peg(27.01)))).toEqual([])
  expect(only(wallInside, plan(shaft, peg(27.01))).measured!.value).toBeCloseTo(0.01, 5)
})

test('the point of a bit counts', () => {
  // a twist drill of 118° and 6 is 1.8026 longer at its point: 40 − 15 − 1.8026 − (20 + 4) = −0.8026
  const peg = (depth: number, bit: string) =>
    `hole: peg, on: top, at: { left: 50, front: 15 }, diameter: 6, depth: ${depth}, bit: ${bit}`
  const point = 3 / Math.tan((59 * Math.PI) / 180)
  expect(only(holesMeetInside, plan(shaft, peg(15, 'twist'))).measured!.value).toBeCloseTo(point - 1, 6)
  expect(found(holesMeetInside, plan(shaft, peg(15, 'flat')))).toEqual([])
  const thin = only(wallInside, plan(shaft, peg(15, 'flat')))
  expect(thin).toMatchObject({ facts: { between: 'before' }, severity: 'warning' })
  expect(thin.measured!.value).toBeCloseTo(1, 5)
  expect(thin.limit!.value).toBeCloseTo(25.4 / 16, 9)
})

/** Source: by definition; a drill of 118° is r / tan 59° longer at its point, and 3/8" of wood is before the bar across. */
test('the point counts however deep the hole goes on, so that a deeper one reaches further in', () => {
  const inch = 25.4
  const point = inch / 16 / Math.tan((59 * Math.PI) / 180)
  const cuts = (depth: number) => [
    `hole: spigot, on: bottom, at: { left: 50, front: center }, diameter: ${0.75 * inch}, depth: 19`,
    `hole: chain, on: front, at: { left: 50, bottom: 12 }, diameter: ${inch / 8}, depth: ${depth}, bit: twist`,
  ]
  const wood = (38.1 - 0.75 * inch) / 2
  const depths = [23 / 64, 24 / 64, 25 / 64, 26 / 64, 28 / 64].map(part => part * inch)
  for (const depth of depths) {
    const { measured } = only(holesMeetInside, planWithCuts(cuts(depth), '100 x 40 x 38.1'))
    expect(measured!.value).toBeCloseTo(depth + point - wood, 5)
  }
})

/** Source: by definition; up to 31° from its axis the normals of a point of 118° are those of its very tip, and asin(1/4) is 14.5°. */
test('a point beside the middle of a shaft reaches into it square to the shaft', () => {
  const point = 3 / Math.tan((59 * Math.PI) / 180)
  const high = Math.sqrt(4 ** 2 - 1) - 0.2
  const peg = `hole: peg, on: top, at: { left: 50, front: 14 }, diameter: 6, depth: ${20 - high - point}, bit: twist`
  const { measured } = only(holesMeetInside, plan(shaft, peg))
  expect(measured!.value).toBeCloseTo(4 - Math.hypot(1, high), 5)
})

test('where two pass crosswise a sixteenth is enough; side by side they want a diameter', () => {
  const crosswise = only(wallInside, plan(shaft, 'hole: peg, at: { left: 50, bottom: 28 }, diameter: 6'))
  expect(crosswise).toMatchObject({ facts: { between: 'crosswise' } })
  expect(crosswise.measured!.value).toBeCloseTo(1, 5)
  expect(found(wallInside, plan(shaft, 'hole: peg, at: { left: 50, bottom: 29 }, diameter: 6'))).toEqual([])
  // from opposite ends they pass each other 4 apart
  const beside = only(
    wallInside,
    plan(
      'hole: one, on: left, at: { bottom: 15, front: 15 }, diameter: 6, depth: 60',
      'hole: two, on: right, at: { bottom: 25, front: 15 }, diameter: 6, depth: 60',
    ),
  )
  expect(beside).toMatchObject({ facts: { between: 'beside' }, limit: { value: 6 } })
  expect(beside.measured!.value).toBeCloseTo(4, 5)
})

test('what shows on a face is said there and nowhere else', () => {
  const cuts = [
    'hole: one, at: { left: 40, bottom: 20 }, diameter: 6',
    'hole: two, at: { left: 48, bottom: 20 }, diameter: 6',
  ]
  expect(found(wallTooThin, plan(...cuts))).toHaveLength(1)
  expect(found(wallInside, plan(...cuts))).toEqual([])
})

test('two that lean toward each other meet below, and their rims say nothing then', () => {
  const cuts = [
    'hole: one, at: { left: 40, bottom: 20 }, diameter: 6, depth: 24, lean: { toward: left, angle: 20 }',
    'hole: two, at: { left: 50, bottom: 20 }, diameter: 6, depth: 24, lean: { toward: right, angle: 20 }',
  ]
  expect(found(holesMeetInside, plan(...cuts))).toHaveLength(1)
  expect(found(featuresMeet, plan(...cuts))).toEqual([])
  expect(found(wallTooThin, plan(...cuts))).toEqual([])
})

test('a counterbore is as wide inside as on the face, and a countersink narrows', () => {
  const screw = (mouth: string) => `hole: screw, at: { left: 50, bottom: 29.5 }, diameter: 4, ${mouth}`
  const high = 'hole: shaft, on: left, at: { bottom: 18, front: 6 }, diameter: 8'
  // 3 deep, at the floor of the counterbore, the shaft reaches up to 18 + √(4² − 3²), and 29.5 − 10 is less
  expect(found(holesMeetInside, plan(high, screw('counterbore: 20 x 3')))).toHaveLength(1)
  expect(found(holesMeetInside, plan(high, screw('countersink: 10')))).toEqual([])
})

test('bored from both ends along one axis, or in steps, is wanted', () => {
  const cuts = [
    'hole: one, on: left, at: { bottom: 20, front: 15 }, diameter: 8, depth: 60',
    'hole: two, on: right, at: { bottom: 20, front: 15 }, diameter: 6, depth: 60',
  ]
  for (const rule of [holesMeetInside, exitOnFeature, wallInside])
    expect(found(rule, plan(...cuts))).toEqual([])
})

test('a hole that comes out where another begins is said so', () => {
  const finding = only(
    exitOnFeature,
    plan(shaft, 'hole: end, on: right, at: { bottom: 25, front: 15 }, diameter: 6, depth: 10'),
  )
  expect(finding).toMatchObject({
    severity: 'error',
    places: [{ feature: 'shaft' }, { feature: 'end' }],
    facts: { face: 'right', other: 'hole' },
  })
  expect(
    found(
      holesMeetInside,
      plan(shaft, 'hole: end, on: right, at: { bottom: 25, front: 15 }, diameter: 6, depth: 10'),
    ),
  ).toEqual([])
})

test('two rows that meet are one thing to say, with how many places there are', () => {
  const finding = only(
    holesMeetInside,
    plan(
      'row: pins, on: top, at: { left: 20, front: 15 }, toward: right, spacing: 20, count: 4, diameter: 4, depth: 22',
      shaft,
    ),
  )
  expect(finding.facts.count.value).toBe(4)
})

test('holes of a mirrored part are asked once, as they are drawn', () => {
  const text = plan(shaft, 'hole: peg, at: { left: 50, bottom: 26 }, diameter: 6').replace(
    '    size:',
    '    make: 2\n    mirrored: true\n    size:',
  )
  expect(found(holesMeetInside, text)).toHaveLength(1)
})
