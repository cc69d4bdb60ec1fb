import { expect, test } from 'vitest'
import type { Side } from '../../src/finding/side.ts'
import { boreInPart, built, centresOf, partWithCuts, planWithCuts } from './model-of.ts'

/** On 100 x 40 x 20, three holes from { left/front: 5, bottom/front: 6 }, 7 apart. Source: the plan file's words. */
test.each<[on: Side, at: string, toward: Side, last: readonly [number, number, number]]>([
  ['front', 'left: 5, bottom: 6', 'right', [19, 6, 20]],
  ['front', 'right: 5, bottom: 6', 'left', [81, 6, 20]],
  ['front', 'left: 5, bottom: 6', 'top', [5, 20, 20]],
  ['front', 'left: 5, top: 6', 'bottom', [5, 20, 20]],
  ['back', 'left: 5, bottom: 6', 'right', [19, 6, 0]],
  ['back', 'right: 5, top: 6', 'bottom', [95, 20, 0]],
  ['top', 'left: 5, front: 6', 'right', [19, 40, 14]],
  ['top', 'left: 5, front: 3', 'back', [5, 40, 3]],
  ['bottom', 'left: 5, back: 3', 'front', [5, 0, 17]],
  ['left', 'front: 2, bottom: 6', 'top', [0, 20, 18]],
  ['left', 'front: 3, bottom: 6', 'back', [0, 6, 3]],
  ['right', 'back: 3, top: 6', 'front', [100, 34, 17]],
])('on the %s from { %s } a row toward the %s ends where the words say', (on, at, toward, last) => {
  const part = partWithCuts([
    `row: posts, on: ${on}, at: { ${at} }, toward: ${toward}, spacing: 7, count: 3, diameter: 2`,
  ])
  const [x, y, z] = last
  expect(boreInPart(part.drawn, part.drawn.features[2]!)).toEqual({ x, y, z })
})

test('center along its own direction centres the whole row', () => {
  for (const toward of ['left', 'right']) {
    const part = partWithCuts([
      `row: posts, at: { left: center, bottom: 6 }, toward: ${toward}, spacing: 10, count: 4, diameter: 2`,
    ])
    const xs = centresOf(part.drawn).map(c => c!.x)
    expect(xs).toEqual(toward === 'right' ? [35, 45, 55, 65] : [65, 55, 45, 35])
  }
})

test('center across the row puts the first hole in the middle and leaves the rest to the spacing', () => {
  const part = partWithCuts([
    'row: posts, at: { left: 5, bottom: center }, toward: right, spacing: 10, count: 3, diameter: 2',
  ])
  expect(centresOf(part.drawn)).toEqual([
    { x: 5, y: 20 },
    { x: 15, y: 20 },
    { x: 25, y: 20 },
  ])
})

test('the holes of a row are called by its name and their number, and know their row', () => {
  const part = partWithCuts([
    'row: posts, at: center, toward: right, spacing: 10, count: 2, diameter: 2, depth: 4',
  ])
  expect(part.drawn.features.map(({ id, row }) => [id, row])).toEqual([
    ['posts.1', { row: 'posts', pattern: 'row', number: 1, count: 2 }],
    ['posts.2', { row: 'posts', pattern: 'row', number: 2, count: 2 }],
  ])
})

test('a row of one hole is that hole', () => {
  const part = partWithCuts([
    'row: posts, at: { left: 5, bottom: 6 }, toward: right, spacing: 10, count: 1, diameter: 2',
  ])
  expect(centresOf(part.drawn)).toEqual([{ x: 5, y: 6 }])
})

test('many steps do not add their rounding up', () => {
  const part = partWithCuts([
    'row: posts, at: { left: 0.1, bottom: 6 }, toward: right, spacing: 0.1, count: 900, diameter: 0.05',
  ])
  expect(centresOf(part.drawn)[899]!.x).toBeCloseTo(90, 10)
})

test('a row toward a side that its face does not run to is a fault that names the four it may', () => {
  const { model, findings } = built(
    planWithCuts([
      'row: posts, on: top, at: { left: 5, front: 6 }, toward: bottom, spacing: 7, count: 3, diameter: 2',
    ]),
  )
  expect(model).toBeUndefined()
  expect(findings).toMatchObject([
    {
      rule: 'row-direction',
      places: [{ part: 'plank', feature: 'posts' }],
      facts: { found: 'bottom', allowed: 'left, right, front, back' },
    },
  ])
})

test('a row with no place is one unplaced feature, not one a hole', () => {
  const part = partWithCuts([
    'row: posts, at: { left: 5 }, toward: right, spacing: unknown, count: 3, diameter: 2',
  ])
  expect(part.drawn.features).toMatchObject([
    {
      id: 'posts',
      shape: {
        kind: 'unplaced',
        what: 'row',
        missing: [
          { kind: 'size', name: 'spacing' },
          { kind: 'distance', between: ['bottom', 'top'] },
        ],
      },
    },
  ])
})
