import { expect, test } from 'vitest'
import { sides } from '../../src/finding/side.ts'
import type { Bounds, Contour } from '../../src/geometry/shape/contour.ts'
import { workedLines } from '../../src/model/strip.ts'
import { modelOf, onlyPart, partWithCuts } from './model-of.ts'
import { box, seen } from './strips.ts'

/** 100 x 40 x 20. Front, back and ends are seen with the top up, top and bottom with the left end at the left. Source: the plan file's words. */
test.each<[groove: string, bounds: Bounds]>([
  ['at: { bottom: 10 }', box(0, 10, 100, 14)],
  ['at: { top: 10 }', box(0, 26, 100, 30)],
  ['at: center, along: length', box(0, 18, 100, 22)],
  ['at: { left: 7 }', box(7, 0, 11, 40)],
  ['at: center, along: width', box(48, 0, 52, 40)],
  ['on: back, at: { left: 7 }', box(89, 0, 93, 40)],
  ['on: top, at: { front: 3 }', box(0, 3, 100, 7)],
  ['on: top, at: { left: 3 }', box(3, 0, 7, 20)],
  ['on: bottom, at: { front: 3 }', box(0, 13, 100, 17)],
  ['on: left, at: { front: 3 }', box(13, 0, 17, 40)],
  ['on: right, at: { bottom: 3 }', box(0, 3, 20, 7)],
  ['at: { bottom: 10 }, stopped: { left: 5, right: 20 }', box(5, 10, 80, 14)],
  ['on: back, at: { bottom: 10 }, stopped: { left: 5 }', box(0, 10, 95, 14)],
  ['at: { left: 7 }, stopped: { top: 15 }', box(7, 0, 11, 25)],
  ['at: { bottom: 10 }, stopped: { right: 20 }, length: 30', box(50, 10, 80, 14)],
  ['on: right, at: { front: 3 }, stopped: { bottom: 6 }, length: 12', box(3, 6, 7, 18)],
])('a groove %s takes the band that the words say', (groove, bounds) => {
  const { feature, bounds: found } = seen(partWithCuts([`groove: a, ${groove}, width: 4, depth: 6`]))
  expect(found).toEqual(bounds)
  expect(feature.shape).toMatchObject({
    kind: 'groove',
    runs: bounds.right - bounds.left === 4 ? 'y' : 'x',
    width: { mm: 4 },
    depth: { mm: 6 },
    stopped: groove.includes('stopped'),
  })
})

test('a groove ends where the outline does, and over a gap it is in two', () => {
  const disc = onlyPart(
    modelOf(
      'paperjig: 1\ntitle: Pier\nunits: mm\nparts:\n  wheel:\n    round: 100\n    inside: 30\n    thickness: 10\n    cuts:\n      - { groove: a, at: center, along: length, width: 4, depth: 6 }\n',
    ),
  ).drawn
  expect(disc.features.map(({ id }) => id)).toEqual(['a.1', 'a.2'])
  const lines: readonly Contour[] = disc.features.flatMap(({ shape }) =>
    'region' in shape ? workedLines(shape.region) : [],
  )
  // two sides of each stretch, and none where it runs out
  expect(lines.map(({ closed, segments }) => [closed, segments.length])).toEqual(Array(4).fill([false, 1]))
})

test('a length that comes to the end runs out there', () => {
  const { region } = seen(
    partWithCuts(['groove: a, at: { bottom: 3 }, width: 2, depth: 1, stopped: { left: 20 }, length: 80']),
  )
  // two sides and the one stop
  expect(workedLines(region).map(({ segments }) => segments.length)).toEqual([3])
})

test('every side may bear a groove', () => {
  for (const side of sides) {
    const at = side === 'left' || side === 'right' ? 'bottom' : 'left'
    const { feature } = seen(partWithCuts([`groove: a, on: ${side}, at: { ${at}: 5 }, width: 2, depth: 1`]))
    expect(feature.face).toBe(side)
  }
})
