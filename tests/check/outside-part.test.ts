import { expect, test } from 'vitest'
import { outsidePart } from '../../src/check/outside-part.ts'
import { modelOf, planOf, planWithCuts } from '../model/model-of.ts'

const found = (cut: string, body = '') =>
  outsidePart(modelOf(planOf(`${body}    cuts:\n      - { ${cut} }\n`))).map(
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
  ['hole: pin, on: top, at: { left: 50, front: 2 }, diameter: 6', 1, 'hole', 'bottom'],
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

test('of a row only the holes that stick out are named', () => {
  const found = outsidePart(
    modelOf(
      planWithCuts([
        'row: posts, at: { left: 10, bottom: 20 }, toward: right, spacing: 30, count: 5, diameter: 4',
      ]),
    ),
  )
  expect(found.map(f => f.places[0]!.feature)).toEqual(['posts.4', 'posts.5'].slice(0, found.length))
  expect(found.map(f => f.measured!.value)).toEqual([2, 32])
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
