import { expect, test } from 'vitest'
import { regionArea } from '../../src/geometry/measure/area.ts'
import { regionBounds } from '../../src/geometry/measure/bounds.ts'
import type { Bounds } from '../../src/geometry/shape/contour.ts'
import { finishedOutline, silhouette } from '../../src/model/finished-outline.ts'
import { partWithCuts } from './model-of.ts'
import { box, seen } from './strips.ts'

/** What the short face loses: thickness × tan(angle). Source: the right triangle under the slope. */
test.each<[bevel: string, face: string, bounds: Bounds]>([
  ['on: right, angle: 45, short: front', 'front', box(80, 0, 100, 40)],
  ['on: right, angle: 45, short: back', 'back', box(0, 0, 20, 40)],
  ['on: left, angle: 45, short: back', 'back', box(80, 0, 100, 40)],
  ['on: top, angle: 45, short: front', 'front', box(0, 20, 100, 40)],
])('a bevel %s makes the %s shorter by the thickness', (bevel, face, bounds) => {
  const { feature, bounds: found } = seen(partWithCuts([`bevel: a, ${bevel}`]))
  expect(found).toEqual(bounds)
  expect(feature.face).toBe(face)
})

test.each([5, 15, 22.5, 30, 60])('a bevel of %d° makes the face shorter by thickness × tan(angle)', angle => {
  const { feature } = seen(partWithCuts([`bevel: a, on: left, angle: ${angle}, short: front`]))
  if (feature.shape.kind !== 'bevel') throw new Error(feature.shape.kind)
  const lost = 20 * Math.tan((angle * Math.PI) / 180)
  expect(feature.shape.shorter.mm).toBeCloseTo(lost, 12)
  expect(regionBounds(feature.shape.region).right).toBeCloseTo(lost, 9)
  // the slope that the blade leaves: height / cos(angle)
  expect(Math.hypot(20, lost)).toBeCloseTo(20 / Math.cos((angle * Math.PI) / 180), 9)
})

test('the finished front ends at the line of a bevel that makes it shorter, the silhouette where the back ends', () => {
  const short = (face: string) =>
    partWithCuts([
      `bevel: a, on: right, angle: 45, short: ${face}`,
      'notch: n, on: left, at: { bottom: 0 }, size: 10 x 10',
    ]).drawn
  expect(finishedOutline(short('front')).map(regionArea)).toEqual([80 * 40 - 100])
  expect(silhouette(short('front')).map(regionArea)).toEqual([100 * 40 - 100])
  expect(finishedOutline(short('back')).map(regionArea)).toEqual([100 * 40 - 100])
})

test('two bevels of one corner take the corner once', () => {
  const { drawn } = partWithCuts([
    'bevel: a, on: [left, right], angle: 45, short: front',
    'bevel: b, on: top, angle: 45, short: front',
  ])
  expect(drawn.features.map(({ id }) => id)).toEqual(['a.left', 'a.right', 'b'])
  expect(finishedOutline(drawn).map(regionArea)).toEqual([expect.closeTo(60 * 20, 9)])
})
