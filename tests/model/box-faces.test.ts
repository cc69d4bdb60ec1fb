import { expect, test } from 'vitest'
import { type Side, sides } from '../../src/finding/side.ts'
import { boxPose, faceExtent, inward } from '../../src/model/box-faces.ts'
import { onPlane, type Point3, toPart } from '../../src/model/pose.ts'

const extent = { length: 100, width: 40, thickness: 20 }

const point3 = (x: number, y: number, z: number): Point3 => ({ x, y, z })

const cross = (a: Point3, b: Point3): Point3 =>
  point3(a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x)

const plus = (a: Point3, b: Point3): Point3 => point3(a.x + b.x, a.y + b.y, a.z + b.z)

test.each(sides)('the frame of the %s is right-handed and made of unit vectors', side => {
  const { right, up, out } = boxPose(side, extent)
  expect(plus(cross(right, up), point3(0, 0, 0))).toEqual(out)
  for (const axis of [right, up, out]) expect(Math.hypot(axis.x, axis.y, axis.z)).toBe(1)
})

test.each(sides)('the third axis of the %s leaves the wood', side => {
  const { out } = boxPose(side, extent)
  const { right, up } = faceExtent(side, extent)
  const middle = toPart(boxPose(side, extent), { x: right / 2, y: up / 2 })
  const fromCentre = point3(middle.x - 50, middle.y - 20, middle.z - 10)
  expect(fromCentre.x * out.x + fromCentre.y * out.y + fromCentre.z * out.z).toBeGreaterThan(0)
})

/**
 * x runs from the left end, y from the bottom edge, z from the back. Source: a box held in the hand, front toward
 * you, turned so that the face is seen; the words are those of the plan file (face side toward you, length left to
 * right).
 */
test.each<[Side, { lowerLeft: Point3; lowerRight: Point3; upperLeft: Point3 }]>([
  ['front', { lowerLeft: point3(0, 0, 20), lowerRight: point3(100, 0, 20), upperLeft: point3(0, 40, 20) }],
  ['back', { lowerLeft: point3(100, 0, 0), lowerRight: point3(0, 0, 0), upperLeft: point3(100, 40, 0) }],
  // seen from the left, the front is at the right
  ['left', { lowerLeft: point3(0, 0, 0), lowerRight: point3(0, 0, 20), upperLeft: point3(0, 40, 0) }],
  ['right', { lowerLeft: point3(100, 0, 20), lowerRight: point3(100, 0, 0), upperLeft: point3(100, 40, 20) }],
  // seen from above with the left end at the left, the front is nearest
  ['top', { lowerLeft: point3(0, 40, 20), lowerRight: point3(100, 40, 20), upperLeft: point3(0, 40, 0) }],
  ['bottom', { lowerLeft: point3(0, 0, 0), lowerRight: point3(100, 0, 0), upperLeft: point3(0, 0, 20) }],
])('the corners of the %s lie where the words say', (side, { lowerLeft, lowerRight, upperLeft }) => {
  const pose = boxPose(side, extent)
  const { right, up } = faceExtent(side, extent)
  expect(toPart(pose, { x: 0, y: 0 })).toEqual(lowerLeft)
  expect(toPart(pose, { x: right, y: 0 })).toEqual(lowerRight)
  expect(toPart(pose, { x: 0, y: up })).toEqual(upperLeft)
})

test.each(sides)('a place on the %s taken into the part and back is the same place', side => {
  const pose = boxPose(side, extent)
  expect(onPlane(pose, toPart(pose, { x: 3, y: 7 }))).toEqual({ x: 3, y: 7 })
})

/** The face itself is where the way into the wood begins, and it leads against the face's outward axis. */
test.each(sides)('from the %s the way into the wood begins on that face', side => {
  const { origin, out } = boxPose(side, extent)
  const { axis, start, sign } = inward(side, extent)
  expect(start).toBe(origin[axis])
  expect(sign).toBe(-out[axis])
})
