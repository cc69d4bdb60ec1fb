import { expect, test } from 'vitest'
import { holeComesOut } from '../../../src/check/inside/hole-comes-out.ts'
import { wallInside } from '../../../src/check/inside/wall-inside.ts'
import { tooDeep } from '../../../src/check/wood/too-deep.ts'
import { planWithCuts } from '../../model/model-of.ts'
import { found, only } from '../found.ts'

const plan = (...cuts: string[]) => planWithCuts(cuts, '100 x 40 x 30')

/** Source: by trigonometry; an axis that leans 30° is 30·tan 30° aside when it is 30 deep. */
test('a through hole that leans out of a side is found by how far', () => {
  const finding = only(
    holeComesOut,
    plan('hole: leg, at: { left: 14, bottom: 20 }, diameter: 6, lean: { toward: right, angle: 30 }'),
  )
  const lean = Math.PI / 6
  expect(finding).toMatchObject({ severity: 'error', facts: { into: 'left', rim: 'part' } })
  // on the back, where it was to come out, the far end of its ellipse is beyond the end
  expect(finding.measured!.value).toBeCloseTo(30 * Math.tan(lean) + 3 / Math.cos(lean) - 14, 9)
})

test('one that only comes near is a thin wall', () => {
  const lean = Math.PI / 6
  const edge = 30 * Math.tan(lean) + 3 / Math.cos(lean)
  const finding = only(
    wallInside,
    plan(
      `hole: leg, at: { left: ${(edge + 2).toFixed(6)}, bottom: 20 }, diameter: 6, lean: { toward: right, angle: 30 }`,
    ),
  )
  // at the back, where its ellipse is nearest to the end
  expect(finding).toMatchObject({ facts: { other: 'left', between: 'beside', fromFront: { value: 30 } } })
  expect(finding.measured!.value).toBeCloseTo(2, 5)
})

test('a hole that runs into a mortise of another face is found, by how deep', () => {
  const finding = only(
    holeComesOut,
    plan(
      'slot: mouth, at: { left: 30, bottom: 10 }, size: 20 x 20, depth: 15',
      'hole: pin, on: left, at: { bottom: 20, front: 8 }, diameter: 6, depth: 31, bit: flat',
    ),
  )
  expect(finding).toMatchObject({
    severity: 'warning',
    facts: { into: 'slot' },
    places: [{ feature: 'pin' }, { feature: 'mouth' }],
  })
  expect(finding.measured!.value).toBeCloseTo(1, 6)
})

test('a peg that goes right through a mortise is wanted, and one that grazes it is not', () => {
  const mortise = 'slot: mouth, at: { left: 30, bottom: 10 }, size: 20 x 20, depth: 15'
  const peg = (front: number) => `hole: peg, on: top, at: { left: 40, front: ${front} }, diameter: 6`
  expect(found(holeComesOut, plan(mortise, peg(8)))).toEqual([])
  expect(only(holeComesOut, plan(mortise, peg(16))).facts.rim).toBe('part')
  const beyond = only(wallInside, plan(mortise, peg(19)))
  expect(beyond.facts.other).toBe('slot')
  expect(beyond.measured!.value).toBeCloseTo(1, 5)
})

test('a hole along a notch that is cut into its way comes out there, and right through it is wanted', () => {
  const notch = 'notch: step, on: bottom, at: { left: 40 }, size: 20 x 15'
  const hole = (bottom: number) => `hole: pin, on: left, at: { bottom: ${bottom}, front: 15 }, diameter: 6`
  expect(found(holeComesOut, plan(notch, hole(8)))).toEqual([])
  const finding = only(holeComesOut, plan(notch, hole(16)))
  expect(finding).toMatchObject({ facts: { into: 'notch', rim: 'part' }, places: [{}, { feature: 'step' }] })
})

test('a groove, a rebate and a bevel are hollows too', () => {
  const into = (cut: string, hole: string) => only(holeComesOut, plan(cut, hole)).facts.into
  const fromTop = (left: number, depth: number) =>
    `hole: pin, on: top, at: { left: ${left}, front: 4 }, diameter: 4, depth: ${depth}, bit: flat`
  expect(into('groove: channel, at: { bottom: 18 }, width: 6, depth: 8', fromTop(50, 17))).toBe('groove')
  expect(into('rebate: ledge, edge: bottom, size: 12 x 10', fromTop(50, 30))).toBe('rebate')
})

/** Source: by trigonometry; under a slope of the angle a the rim of a flat floor is nearest, (h − r·tan a)·cos a away. */
test('under a slanted edge the rim of the floor is what is nearest', () => {
  const text = `paperjig: 1
title: Wedge
units: mm
parts:
  wedge:
    size: 100
    thickness: 30
    taper: { left: 20, right: 60, straight: top }
    cuts:
      - { hole: pin, on: top, at: { left: 50, front: center }, diameter: 10, depth: 37, bit: flat }
`
  // the lower edge rises by 40 in 100 toward the left end
  const slope = Math.atan2(40, 100)
  const below = 40 - 37
  const finding = only(tooDeep, text)
  expect(finding.measured!.value).toBeCloseTo((below - 5 * Math.tan(slope)) * Math.cos(slope), 6)
})
