import { expect, test } from 'vitest'
import { regionArea } from '../../src/geometry/measure/area.ts'
import type { Bounds } from '../../src/geometry/shape/contour.ts'
import { modelOf, onlyPart, partWithCuts, planOf } from './model-of.ts'
import { box, seen } from './strips.ts'

/** The strip on the front or back, whichever of the two faces the plan begins with. */
test.each<[rebate: string, face: string, bounds: Bounds]>([
  ['on: front, edge: bottom', 'front', box(0, 0, 100, 6)],
  ['on: front, edge: right', 'front', box(94, 0, 100, 40)],
  ['on: back, edge: right', 'back', box(0, 0, 6, 40)],
  ['on: back, edge: top, stopped: { left: 10 }', 'back', box(0, 34, 90, 40)],
  ['on: back, edge: top, stopped: { right: 10 }, length: 20', 'back', box(10, 34, 30, 40)],
  ['on: front, edge: left, stopped: { bottom: 12 }', 'front', box(0, 12, 6, 40)],
  ['on: top, edge: back', 'back', box(0, 31, 100, 40)],
  ['on: left, edge: front', 'front', box(0, 0, 9, 40)],
])('a rebate %s of 6 x 9 leaves the %s by its strip', (rebate, face, bounds) => {
  const { feature, bounds: found } = seen(partWithCuts([`rebate: a, ${rebate}, size: 6 x 9`]))
  expect(found).toEqual(bounds)
  expect(feature.face).toBe(face)
  const onEdge = rebate.startsWith('on: top') || rebate.startsWith('on: left')
  expect(feature.shape).toMatchObject({
    kind: 'rebate',
    width: { mm: onEdge ? 9 : 6 },
    depth: { mm: onEdge ? 6 : 9 },
  })
})

test('a strip follows rounded corners and slanting ends, and stops at an inner corner', () => {
  const rounded = onlyPart(
    modelOf(planOf('    corners: 5\n    cuts: [{ rebate: a, edge: top, size: 2 x 2 }]\n')),
  )
  expect(regionArea(seen(rounded).region)).toBeCloseTo(200 - 2 * cornerLoss(5, 2), 9)
  const inner = onlyPart(
    modelOf(
      `paperjig: 1\ntitle: Pier\nunits: mm\nparts:\n  elbow:\n    thickness: 10\n    outline:\n      - { to: [0, 0] }\n      - { to: [60, 0] }\n      - { to: [60, 20] }\n      - { to: [20, 20], name: seat }\n      - { to: [20, 50] }\n      - { to: [0, 50] }\n    cuts: [{ rebate: a, edge: seat, size: 4 x 2 }]\n`,
    ),
  )
  expect(seen(inner).bounds).toEqual(box(20, 16, 60, 20))
  const taper = onlyPart(
    modelOf(
      `paperjig: 1\ntitle: Pier\nunits: mm\nparts:\n  wedge:\n    thickness: 10\n    outline:\n      - { to: [0, 0] }\n      - { to: [60, 0], name: foot }\n      - { to: [50, 20] }\n      - { to: [0, 20] }\n    cuts: [{ rebate: a, edge: foot, size: 4 x 2 }]\n`,
    ),
  )
  expect(regionArea(seen(taper).region)).toBeCloseTo(60 * 4 - (4 * 2) / 2, 9)
})

/** The area between a square corner and its arc of radius r, as far as h from one side: h·r − ∫√(r² − (r − t)²) dt. */
function cornerLoss(r: number, h: number): number {
  const u = r - h
  const underArc = (r * r * (Math.PI / 2 - Math.asin(u / r)) - u * Math.sqrt(r * r - u * u)) / 2
  return h * r - underArc
}
