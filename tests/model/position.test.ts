import { expect, test } from 'vitest'
import type { Side } from '../../src/finding/side.ts'
import { boreInPart, partWithCuts } from './model-of.ts'

/**
 * On a part of 100 x 40 x 20, 3 from the side named and in the middle of the other direction. x from the left end, y
 * from the bottom edge, z from the back. Source: the plan file's words, every position is a distance from a side.
 */
const places: readonly [on: Side, from: Side, x: number, y: number, z: number][] = [
  ['front', 'left', 3, 20, 20],
  ['front', 'right', 97, 20, 20],
  ['front', 'bottom', 50, 3, 20],
  ['front', 'top', 50, 37, 20],
  ['back', 'left', 3, 20, 0],
  ['back', 'right', 97, 20, 0],
  ['back', 'bottom', 50, 3, 0],
  ['back', 'top', 50, 37, 0],
  ['left', 'front', 0, 20, 17],
  ['left', 'back', 0, 20, 3],
  ['left', 'bottom', 0, 3, 10],
  ['left', 'top', 0, 37, 10],
  ['right', 'front', 100, 20, 17],
  ['right', 'back', 100, 20, 3],
  ['right', 'bottom', 100, 3, 10],
  ['right', 'top', 100, 37, 10],
  ['top', 'left', 3, 40, 10],
  ['top', 'right', 97, 40, 10],
  ['top', 'front', 50, 40, 17],
  ['top', 'back', 50, 40, 3],
  ['bottom', 'left', 3, 0, 10],
  ['bottom', 'right', 97, 0, 10],
  ['bottom', 'front', 50, 0, 17],
  ['bottom', 'back', 50, 0, 3],
]

/** The side that gives the other direction of a face its middle. */
function acrossFrom(on: Side, from: Side): Side {
  if (on === 'front' || on === 'back') return from === 'left' || from === 'right' ? 'bottom' : 'left'
  if (on === 'top' || on === 'bottom') return from === 'left' || from === 'right' ? 'front' : 'left'
  return from === 'front' || from === 'back' ? 'bottom' : 'front'
}

test.each(places)(
  'on the %s, 3 from the %s is the same place in the wood as the words say',
  (on, from, x, y, z) => {
    const other = acrossFrom(on, from)
    const part = partWithCuts([`hole: pin, on: ${on}, at: { ${from}: 3, ${other}: center }, diameter: 2`])
    expect(boreInPart(part.drawn, part.drawn.features[0]!)).toEqual({ x, y, z })
  },
)

test.each<[Side, number, number, number]>([
  ['front', 50, 20, 20],
  ['back', 50, 20, 0],
  ['left', 0, 20, 10],
  ['right', 100, 20, 10],
  ['top', 50, 40, 10],
  ['bottom', 50, 0, 10],
])('on the %s, center is the middle of the face', (on, x, y, z) => {
  const part = partWithCuts([`hole: pin, on: ${on}, at: center, diameter: 2`])
  expect(boreInPart(part.drawn, part.drawn.features[0]!)).toEqual({ x, y, z })
})

test('a distance may be zero or lead out of the wood: the model carries it, the check speaks', () => {
  const part = partWithCuts(['hole: pin, at: { left: 0, bottom: -3 }, diameter: 2'])
  expect(boreInPart(part.drawn, part.drawn.features[0]!)).toEqual({ x: 0, y: -3, z: 20 })
})

test('a distance that the plan leaves out, or that the drawing does not give, makes the feature unplaced', () => {
  const part = partWithCuts([
    'hole: nowhere, diameter: 2',
    'hole: half, at: { left: 3 }, diameter: 2',
    'hole: asked, on: left, at: { front: unknown, top: 3 }, diameter: 2',
  ])
  expect(part.drawn.features.map(({ id, shape }) => [id, shape])).toEqual([
    [
      'nowhere',
      {
        kind: 'unplaced',
        what: 'hole',
        missing: [
          { kind: 'distance', between: ['left', 'right'] },
          { kind: 'distance', between: ['bottom', 'top'] },
        ],
      },
    ],
    ['half', { kind: 'unplaced', what: 'hole', missing: [{ kind: 'distance', between: ['bottom', 'top'] }] }],
    [
      'asked',
      { kind: 'unplaced', what: 'hole', missing: [{ kind: 'distance', between: ['front', 'back'] }] },
    ],
  ])
})
