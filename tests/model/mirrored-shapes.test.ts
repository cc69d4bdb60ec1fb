import { expect, test } from 'vitest'
import { regionBounds } from '../../src/geometry/measure/bounds.ts'
import { mirrorSolid } from '../../src/model/mirror.ts'
import type { Part } from '../../src/model/part.ts'
import { modelOf, onlyPart, planOf } from './model-of.ts'
import { box, rounded } from './strips.ts'

const extent = { length: 100, width: 40, thickness: 20 }

const every = onlyPart(
  modelOf(
    planOf(`    make: 2
    mirrored: true
    cuts:
      - { groove: a, on: [front, back], at: { bottom: 10 }, width: 4, depth: 6, stopped: { left: 5 } }
      - { groove: b, on: left, at: { front: 3 }, width: 4, depth: 6 }
      - { rebate: c, on: back, edge: right, size: 3 x 4, stopped: { top: 6 } }
      - { bevel: d, on: right, angle: 12, short: back }
      - { chamfer: e, edges: [top, left], size: 2 }
      - { round-over: f, on: back, edges: all, radius: 1 }
      - { engrave: g, at: { left: 4, bottom: 20 }, text: No 2, height: 5 }
      - { engrave: h, at: { right: 4, top: 2 }, lines: [[[0, 0], [5, 5], [10, 0], [0, 0]]] }
`),
  ),
)

test('mirrored twice every kind is as drawn', () => {
  const mirrored = every.pieces[1]!.solid
  expect(mirrorSolid(mirrored, extent)).toEqual(every.drawn)
  expect(mirrored.features).not.toEqual(every.drawn.features)
})

test('what runs along the right end of one piece runs along the end called right of the other, at the left', () => {
  const strip = (solid: Part['drawn'], id: string) => {
    const shape = solid.features.find(f => f.id === id)!.shape
    if (!('region' in shape)) throw new Error(shape.kind)
    return rounded(regionBounds(shape.region))
  }
  const mirrored = every.pieces[1]!.solid
  expect(strip(every.drawn, 'c')).toEqual(box(0, 0, 3, 34))
  // the back of the mirrored piece is seen with its right end at the right
  expect(strip(mirrored, 'c')).toEqual(box(97, 0, 100, 34))
  expect(mirrored.features.map(f => ('edge' in f.shape ? f.shape.edge : f.face))).toEqual(
    every.drawn.features.map(f => ('edge' in f.shape ? f.shape.edge : f.face)),
  )
})

test('an engraved text reads the same on both hands, from the same real end', () => {
  const text = (solid: Part['drawn']) => solid.features.find(f => f.id === 'g')!.shape
  expect(text(every.drawn)).toMatchObject({ text: 'No 2', at: { x: 4, y: 20 }, align: 'start' })
  expect(text(every.pieces[1]!.solid)).toMatchObject({ text: 'No 2', at: { x: 96, y: 20 }, align: 'end' })
})
