import { expect, test } from 'vitest'
import type { Side } from '../../src/finding/side.ts'
import { regionArea } from '../../src/geometry/measure/area.ts'
import { regionBounds } from '../../src/geometry/measure/bounds.ts'
import { finishedOutline } from '../../src/model/finished-outline.ts'
import { modelOf, onlyPart, partWithCuts, planOf } from './model-of.ts'

/** A notch of 12 x 7 (along the edge x into the part) on 100 x 40 x 20: the box of its waste on the front. Source: the plan file's words. */
test.each<[on: Side, at: string, box: readonly [number, number, number, number]]>([
  ['bottom', 'left: 5', [5, 0, 17, 7]],
  ['bottom', 'right: 5', [83, 0, 95, 7]],
  ['bottom', 'left: center', [44, 0, 56, 7]],
  ['top', 'left: 5', [5, 33, 17, 40]],
  ['top', 'right: 5', [83, 33, 95, 40]],
  ['left', 'bottom: 5', [0, 5, 7, 17]],
  ['left', 'top: 5', [0, 23, 7, 35]],
  ['left', 'bottom: center', [0, 14, 7, 26]],
  ['right', 'bottom: 5', [93, 5, 100, 17]],
  ['right', 'top: 0', [93, 28, 100, 40]],
])('on the %s at { %s } it takes the box that the words say', (on, at, box) => {
  const [left, bottom, right, top] = box
  const feature = partWithCuts([`notch: step, on: ${on}, at: { ${at} }, size: 12 x 7`]).drawn.features[0]!
  expect(feature).toMatchObject({ face: 'front', shape: { kind: 'edge-cut', edge: on } })
  if (feature.shape.kind !== 'edge-cut') throw new Error(feature.shape.kind)
  expect(regionBounds(feature.shape.region)).toEqual({ left, bottom, right, top })
})

test('without a place it asks for one along its edge alone', () => {
  const missing = (on: string) => {
    const shape = partWithCuts([`notch: step, on: ${on}, size: 12 x 7`]).drawn.features[0]!.shape
    return shape.kind === 'unplaced' ? shape.missing : undefined
  }
  expect(missing('bottom')).toEqual([{ kind: 'distance', between: ['left', 'right'] }])
  expect(missing('left')).toEqual([{ kind: 'distance', between: ['bottom', 'top'] }])
})

test('the finished outline is the front without its notches', () => {
  const part = partWithCuts([
    'notch: step, on: bottom, at: { left: 20 }, size: 12 x 7',
    'notch: seat, on: right, at: { top: 0 }, size: 10 x 6',
  ])
  const outline = finishedOutline(part.drawn)
  expect(outline).toHaveLength(1)
  expect(regionArea(outline[0]!)).toBeCloseTo(100 * 40 - 12 * 7 - 10 * 6, 9)
})

test('a notch takes a rounded corner with it', () => {
  const part = onlyPart(
    modelOf(
      planOf('    corners: 5\n    cuts:\n      - { notch: seat, on: right, at: { top: 0 }, size: 10 x 8 }\n'),
    ),
  )
  const [outline] = finishedOutline(part.drawn)
  const arcs = outline!.outer.segments.filter(s => s.kind === 'arc')
  expect(arcs.map(a => a.tag).toSorted()).toEqual(['bottom-left', 'bottom-right', 'top-left'])
  // four corners of radius 5 leave (4 − π)·25 off the rectangle; one of them goes with the notch
  expect(regionArea(outline!)).toBeCloseTo(4000 - ((4 - Math.PI) * 25 * 3) / 4 - 80, 9)
})

test('notches from two edges that meet leave two pieces of outline', () => {
  const part = partWithCuts([
    'notch: under, on: bottom, at: { left: 40 }, size: 12 x 20',
    'notch: over, on: top, at: { left: 40 }, size: 12 x 20',
  ])
  expect(finishedOutline(part.drawn).map(regionArea)).toEqual([1600, 1920])
})
