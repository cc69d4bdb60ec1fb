import { expect, test } from 'vitest'
import { regionBounds } from '../../src/geometry/measure/bounds.ts'
import type { Placed } from '../../src/model/feature.ts'
import { isPlaced } from '../../src/model/feature.ts'
import { mirrorSolid } from '../../src/model/mirror.ts'
import type { Solid } from '../../src/model/part.ts'
import { onPlane, type Point3 } from '../../src/model/pose.ts'
import { type TakenAway, takenAway } from '../../src/model/taken-away.ts'
import { partWithCuts } from './model-of.ts'

/** Whether a place in a part of 100 x 40 x 20 goes with the cut, by the body that is given. */
function holds({ pose, region, depth, slope }: TakenAway, p: Point3): boolean {
  const { x, y } = onPlane(pose, p)
  const { left, right, bottom, top } = regionBounds(region)
  const down = dot(pose.origin, pose.out) - dot(p, pose.out)
  const under = x > left && x < right && y > bottom && y < top && down > 0 && down < depth
  if (slope === undefined) return under
  return under && dot(p, slope.out) > dot(slope.point, slope.out)
}

const dot = (a: Point3, b: Point3) => a.x * b.x + a.y * b.y + a.z * b.z

function bodyOf(cut: string, solidOf: (drawn: Solid) => Solid = s => s): TakenAway {
  const part = partWithCuts([cut])
  const solid = solidOf(part.drawn)
  return takenAway(solid, solid.features.find(isPlaced) as Placed)!
}

/** z runs from the back, 0, to the front, 20. Hand-made. Source: the words of the plan file. */
test.each<[cut: string, gone: Point3, left: Point3]>([
  [
    'groove: a, at: { bottom: 10 }, width: 4, depth: 6',
    { x: 50, y: 13.9, z: 14.1 },
    { x: 50, y: 14.1, z: 14.1 },
  ],
  ['groove: a, at: { bottom: 10 }, width: 4, depth: 6', { x: 1, y: 10.1, z: 19.9 }, { x: 1, y: 12, z: 13.9 }],
  [
    'groove: a, on: top, at: { front: 3 }, width: 4, depth: 6, stopped: { left: 10 }',
    { x: 10.1, y: 34.1, z: 16.9 },
    { x: 9.9, y: 34.1, z: 16.9 },
  ],
  [
    'groove: a, on: left, at: { back: 3 }, width: 4, depth: 6',
    { x: 5.9, y: 20, z: 3.1 },
    { x: 6.1, y: 20, z: 3.1 },
  ],
  ['rebate: a, on: back, edge: bottom, size: 6 x 9', { x: 50, y: 5.9, z: 8.9 }, { x: 50, y: 5.9, z: 9.1 }],
  [
    'rebate: a, on: right, edge: front, size: 6 x 9',
    { x: 91.1, y: 20, z: 14.1 },
    { x: 90.9, y: 20, z: 14.1 },
  ],
  [
    'slot: a, on: top, at: { left: 10, front: 5 }, size: 30 x 6, depth: 8',
    { x: 10.1, y: 32.1, z: 14.9 },
    { x: 10.1, y: 31.9, z: 14.9 },
  ],
])('what goes and what stays beside it: %s', (cut, gone, left) => {
  const body = bodyOf(cut)
  expect([holds(body, gone), holds(body, left)]).toEqual([true, false])
})

/**
 * So far down from the short face, a bevel has taken (thickness − depth)·tan(angle) of the part, a chamfer its width
 * times what is left of its depth. Source: the right triangle under the slope.
 */
test.each<[cut: string, shorterBy: (down: number) => number]>([
  ['bevel: a, on: right, angle: 15, short: front', d => (20 - d) * Math.tan((15 * Math.PI) / 180)],
  ['bevel: a, on: right, angle: 40, short: back', d => (20 - d) * Math.tan((40 * Math.PI) / 180)],
  ['chamfer: a, on: front, edges: right, size: 6 x 3', d => 6 * (1 - d / 3)],
  ['chamfer: a, on: right, edges: back, size: 3 x 6', d => 6 * (1 - d / 3)],
])('the slope lies where the triangle has it: %s', (cut, shorterBy) => {
  const fromFront = cut.includes('front')
  const body = bodyOf(cut)
  const mirrored = bodyOf(cut, drawn => mirrorSolid(drawn, { length: 100, width: 40, thickness: 20 }))
  for (const down of [0.1, 1.4, 2.7]) {
    const z = fromFront ? 20 - down : down
    for (const off of [-0.01, 0.01]) {
      const x = 100 - shorterBy(down) + off
      expect([down, off, holds(body, { x, y: 20, z })]).toEqual([down, off, off > 0])
      expect(holds(mirrored, { x: 100 - x, y: 20, z })).toBe(off > 0)
    }
  }
})
