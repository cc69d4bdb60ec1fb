import { expect, test } from 'vitest'
import { outsidePart } from '../../../src/check/wood/outside-part.ts'
import { planOf } from '../../model/model-of.ts'
import { found as foundBy } from '../found.ts'

const found = (cut: string, body = '') =>
  foundBy(outsidePart, planOf(`${body}    cuts:\n      - { ${cut} }\n`)).map(
    ({ measured, facts, places, severity, limit }) => {
      const { source, ...place } = places[0]!
      expect(source).toBeDefined()
      expect([severity, limit]).toEqual(['error', { value: 0, unit: 'mm' }])
      expect(measured?.unit).toBe('mm')
      return { by: measured!.value, ...facts, ...place }
    },
  )

/** On 100 x 40 x 20: what is measured by hand is how far the cut reaches past the wood. */
test.each<[cut: string, by: number, what: string, beyond: string]>([
  ['hole: pin, at: { left: 3, bottom: 20 }, diameter: 10', 2, 'hole', 'left'],
  ['hole: pin, at: { right: 1, bottom: 20 }, diameter: 10', 4, 'hole', 'right'],
  ['hole: pin, at: { left: 50, bottom: 0 }, diameter: 10', 5, 'hole', 'bottom'],
  ['hole: pin, at: { left: 50, top: -3 }, diameter: 10', 8, 'hole', 'top'],
  // on the top edge the face is 20 deep from front to back
  ['hole: pin, on: top, at: { left: 50, front: 2 }, diameter: 6', 1, 'hole', 'front'],
  ['slot: mouth, at: { left: 90, bottom: 20 }, size: 30 x 8', 20, 'slot', 'right'],
  ['slot: mouth, at: { left: 10, bottom: -2.5 }, size: 30 x 8', 2.5, 'slot', 'bottom'],
  ['slot: mouth, at: { left: 75, bottom: 20 }, size: 30 x 8, ends: round', 5, 'slot', 'right'],
  ['slot: mouth, on: left, at: { front: center, bottom: 35 }, size: 8 x 7', 2, 'slot', 'top'],
  ['notch: step, on: bottom, at: { left: 95 }, size: 12 x 7', 7, 'notch', 'right'],
  ['notch: step, on: bottom, at: { left: 20 }, size: 12 x 44', 4, 'notch', 'top'],
  ['notch: step, on: left, at: { bottom: -3 }, size: 12 x 7', 3, 'notch', 'bottom'],
])('{ %s } goes %d mm past the part', (cut, by, what, beyond) => {
  const [finding, ...others] = found(cut)
  expect(others).toEqual([])
  expect(finding).toMatchObject({ what, beyond, part: 'plank' })
  expect(finding!.by).toBeCloseTo(by, 9)
})

test('a hole that breaks out of a rounded corner is measured against the arc', () => {
  // the corner's centre is at (10, 10) and its radius 10; the hole's centre lies √50 from it, toward the corner
  const [finding] = found('hole: pin, at: { left: 5, bottom: 5 }, diameter: 8', '    corners: 10\n')
  expect(finding).toMatchObject({ beyond: 'bottom-left', what: 'hole' })
  expect(finding!.by).toBeCloseTo(Math.sqrt(50) + 4 - 10, 9)
})

test('a hole that breaks out of a chamfer is measured square to it', () => {
  const [finding] = found(
    'hole: pin, at: { right: 6, top: 6 }, diameter: 4',
    '    corners: { top-right: { chamfer: 12 } }\n',
  )
  expect(finding).toMatchObject({ beyond: 'top-right' })
  expect(finding!.by).toBeCloseTo(2, 9)
})

test('holes of a row are left to the rule of rows', () => {
  const row = 'row: posts, at: { left: 10, bottom: 20 }, toward: right, spacing: 30, count: 5, diameter: 4'
  expect(found(row)).toEqual([])
})

/** An L of 100 x 60 whose limbs are 20 wide: the corner that goes in is at (20, 20). */
const angle = (cut: string) => `paperjig: 1
title: Loom
units: mm
parts:
  angle:
    thickness: 10
    outline: [{ to: [0, 0] }, { to: [100, 0] }, { to: [100, 20] }, { to: [20, 20] }, { to: [20, 60] }, { to: [0, 60] }]
    cuts:
      - { ${cut} }
`

test('on an outline that goes in, a slot across the corner sticks out by what lies outside, not by its corners', () => {
  // both ends of the slot, at (10, 10) and (30, 10) or so, lie inside; its upper side passes above the inner corner
  const [finding, ...others] = foundBy(
    outsidePart,
    angle('slot: key, at: { left: 5, bottom: 5 }, size: 50 x 19'),
  )
  expect(others).toEqual([])
  // the upper edge lies at 24, the limb ends at 20
  expect(finding!.measured!.value).toBeCloseTo(4, 9)
})

test('a cut-out in a disc is measured against the arc', () => {
  const text = `paperjig: 1
title: Loom
units: mm
parts:
  wheel:
    round: 100
    thickness: 10
    cuts:
      - { cut-out: spoke, at: { left: 82, bottom: center }, size: 15 x 40 }
`
  // the corners of the cut-out lie at (97, 50 ± 20), and the centre at (50, 50)
  const [finding] = foundBy(outsidePart, text)
  expect(finding!.measured!.value).toBeCloseTo(Math.hypot(47, 20) - 50, 9)
  expect(finding!.facts.what).toBe('cut-out')
})

test.each([
  ['a hole whose rim touches the edge', 'hole: pin, at: { left: 5, bottom: 20 }, diameter: 10'],
  ['a slot from end to end', 'slot: mouth, at: { left: 0, bottom: 20 }, size: 100 x 8'],
  ['a notch in the corner', 'notch: step, on: bottom, at: { left: 0 }, size: 12 x 7'],
  ['a notch through to the other edge', 'notch: step, on: bottom, at: { left: 20 }, size: 12 x 40'],
  ['a hole with no place', 'hole: pin, diameter: 10'],
])('%s is not found', (_, cut) => {
  expect(found(cut)).toEqual([])
})

test('a notch that takes a rounded corner with it is not found', () => {
  expect(found('notch: step, on: bottom, at: { left: 0 }, size: 12 x 7', '    corners: 10\n')).toEqual([])
})

test('a part is asked once, however many pieces are made of it', () => {
  const body = '    make: 4\n    mirrored: true\n'
  expect(found('hole: pin, at: { left: 3, bottom: 20 }, diameter: 10', body)).toHaveLength(1)
})
