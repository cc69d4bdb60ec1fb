import { expect, test } from 'vitest'
import type { Side } from '../../src/finding/side.ts'
import { regionArea } from '../../src/geometry/measure/area.ts'
import { regionBounds } from '../../src/geometry/measure/bounds.ts'
import type { Pocket } from '../../src/model/feature.ts'
import { partWithCuts } from './model-of.ts'

function pocketOf(cut: string): Pocket {
  const shape = partWithCuts([cut]).drawn.features[0]!.shape
  if (shape.kind !== 'pocket') throw new Error(shape.kind)
  return shape
}

/**
 * A slot of 30 x 8 on 100 x 40 x 20, 5 from each side named to the near side of the slot: the box on its face.
 * Source: the plan file's words; on the back, left is at the right, on the left end the front is at the right.
 */
test.each<[on: Side, at: string, size: string, box: readonly [number, number, number, number]]>([
  ['front', 'left: 5, bottom: 5', '30 x 8', [5, 5, 35, 13]],
  ['front', 'right: 5, top: 5', '30 x 8', [65, 27, 95, 35]],
  ['front', 'left: center, bottom: center', '30 x 8', [35, 16, 65, 24]],
  ['front', 'left: 5, bottom: 5', '8 x 30', [5, 5, 13, 35]],
  ['back', 'left: 5, bottom: 5', '30 x 8', [65, 5, 95, 13]],
  ['top', 'left: 5, front: 5', '30 x 8', [5, 5, 35, 13]],
  ['top', 'right: 5, back: 5', '30 x 8', [65, 7, 95, 15]],
  ['bottom', 'left: 5, front: 5', '30 x 8', [5, 7, 35, 15]],
  ['left', 'front: 5, bottom: 5', '8 x 30', [7, 5, 15, 35]],
  ['right', 'front: 5, bottom: 5', '8 x 30', [5, 5, 13, 35]],
])('on the %s at { %s } a slot of %s takes the box that the words say', (on, at, size, box) => {
  const { region } = pocketOf(`slot: mouth, on: ${on}, at: { ${at} }, size: ${size}`)
  const [left, bottom, right, top] = box
  expect(regionBounds(region)).toEqual({ left, bottom, right, top })
})

test('round ends are half circles, and the distance leads to their outermost point', () => {
  const { region, ends } = pocketOf('slot: mouth, at: { left: 5, bottom: 5 }, size: 30 x 8, ends: round')
  expect(ends).toBe('round')
  expect(regionBounds(region)).toEqual({ left: 5, bottom: 5, right: 35, top: 13 })
  const arcs = region.outer.segments.filter(s => s.kind === 'arc')
  expect(arcs.map(({ centre, radius }) => ({ centre, radius }))).toEqual([
    { centre: { x: 31, y: 9 }, radius: 4 },
    { centre: { x: 9, y: 9 }, radius: 4 },
  ])
})

/** 40 between centres x 20 wide: 1114.1593. Source: Green's theorem, by calculation. */
test('a slot with round ends has the area of a rectangle and a circle', () => {
  const { region } = pocketOf('slot: mouth, at: center, size: 60 x 20, ends: round')
  expect(regionArea(region)).toBeCloseTo(1114.1593, 4)
})

test('a depth makes a mortise of it, and none a slot through', () => {
  expect(pocketOf('slot: mouth, at: center, size: 30 x 8').depth).toBe('through')
  expect(pocketOf('slot: mouth, at: center, size: 30 x 8, depth: 6').depth).toMatchObject({ mm: 6 })
})

test('a slot that is wider than long has its round ends at the top and the bottom', () => {
  const { region } = pocketOf('slot: mouth, at: { left: 5, bottom: 5 }, size: 8 x 30, ends: round')
  expect(regionBounds(region)).toEqual({ left: 5, bottom: 5, right: 13, top: 35 })
  const arcs = region.outer.segments.filter(s => s.kind === 'arc')
  expect(arcs.map(({ centre }) => centre)).toEqual([
    { x: 9, y: 31 },
    { x: 9, y: 9 },
  ])
})

test('a slot as long as wide with round ends is a circle', () => {
  const { region } = pocketOf('slot: mouth, at: center, size: 8 x 8, ends: round')
  expect(region.outer.segments.map(s => s.kind)).toEqual(['arc', 'arc'])
  expect(regionArea(region)).toBeCloseTo(Math.PI * 16, 9)
})

test('a slot of which the drawing leaves out a size is unplaced and says which', () => {
  const part = partWithCuts(['slot: mouth, at: center, size: unknown x 8, depth: unknown'])
  expect(part.drawn.features[0]!.shape).toEqual({
    kind: 'unplaced',
    what: 'slot',
    missing: [
      { kind: 'size', name: 'size along' },
      { kind: 'size', name: 'depth' },
    ],
  })
})
