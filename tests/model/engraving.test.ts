import { expect, test } from 'vitest'
import { partWithCuts } from './model-of.ts'

test.each<[at: string, point: readonly [number, number], align: string]>([
  ['{ left: 4, bottom: 6 }', [4, 6], 'start'],
  ['{ right: 4, top: 6 }', [96, 29], 'end'],
  ['center', [50, 17.5], 'middle'],
])('a text 5 high at %s stands on its near sides', (at, [x, y], align) => {
  const [feature] = partWithCuts([`engrave: g, at: ${at}, text: Pier, height: 5`]).drawn.features
  expect(feature!.shape).toMatchObject({ kind: 'engraved-text', at: { x, y }, align, height: { mm: 5 } })
})

test('a line drawing stands where its points say, or with the near sides of its rectangle at the place given', () => {
  const paths = (at: string) => {
    const shape = partWithCuts([
      `engrave: g, ${at}lines: [[[10, 10], [20, 15]], [[12, 10], [12, 15], [14, 15], [12, 10]]]`,
    ]).drawn.features[0]!.shape
    if (shape.kind !== 'engraved-lines') throw new Error(shape.kind)
    return shape.paths
  }
  expect(paths('').map(({ closed }) => closed)).toEqual([false, true])
  expect(paths('')[0]!.segments[0]).toMatchObject({ from: { x: 10, y: 10 }, to: { x: 20, y: 15 } })
  expect(paths('at: { left: 3, top: 1 }, ')[0]!.segments[0]).toMatchObject({
    from: { x: 3, y: 34 },
    to: { x: 13, y: 39 },
  })
})
