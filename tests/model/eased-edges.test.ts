import { expect, test } from 'vitest'
import { regionArea } from '../../src/geometry/measure/area.ts'
import { workedLines } from '../../src/model/strip.ts'
import { modelOf, onlyPart, partWithCuts } from './model-of.ts'

test('a chamfer along several edges is a feature of each, one all round is a ring', () => {
  const some = partWithCuts(['chamfer: a, on: [front, back], edges: [top, left], size: 2']).drawn
  expect(some.features.map(({ id, face }) => [id, face])).toEqual([
    ['a.front.top', 'front'],
    ['a.front.left', 'front'],
    ['a.back.top', 'back'],
    ['a.back.left', 'back'],
  ])
  const [ring] = partWithCuts(['round-over: a, edges: all, radius: 2']).drawn.features
  if (ring?.shape.kind !== 'round-over') throw new Error('no round-over')
  expect(ring).toMatchObject({ id: 'a', face: 'front', shape: { edge: 'all' } })
  expect(regionArea(ring.shape.region)).toBeCloseTo(4000 - 96 * 36, 9)
  expect(workedLines(ring.shape.region).map(({ closed }) => closed)).toEqual([true])
})

test('on a ring the rim and the inside are eased alike, each a feature of its own', () => {
  const part = onlyPart(
    modelOf(
      'paperjig: 1\ntitle: Pier\nunits: mm\nparts:\n  ring:\n    round: 60\n    inside: 20\n    thickness: 10\n    cuts:\n      - { chamfer: a, edges: all, size: 1 }\n',
    ),
  )
  const areas = part.drawn.features.map(({ shape }) => ('region' in shape ? regionArea(shape.region) : 0))
  expect(part.drawn.features.map(({ id }) => id)).toEqual(['a.1', 'a.2'])
  expect(areas.toSorted((a, b) => a - b).map(a => a / Math.PI)).toEqual([
    expect.closeTo(11 ** 2 - 10 ** 2, 6),
    expect.closeTo(30 ** 2 - 29 ** 2, 6),
  ])
})

test('a chamfer of two sizes is as wide on the face as the first and as deep down the edge as the second', () => {
  const shape = (on: string) => partWithCuts([`chamfer: a, ${on}, size: 2 x 5`]).drawn.features[0]!.shape
  expect(shape('on: front, edges: top')).toMatchObject({ width: { mm: 2 }, depth: { mm: 5 } })
  expect(shape('on: top, edges: front')).toMatchObject({ edge: 'top', width: { mm: 5 }, depth: { mm: 2 } })
})
