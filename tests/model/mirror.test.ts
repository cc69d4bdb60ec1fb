import fc from 'fast-check'
import { expect, test } from 'vitest'
import { sides } from '../../src/finding/side.ts'
import { regionBounds } from '../../src/geometry/measure/bounds.ts'
import type { Region } from '../../src/geometry/shape/contour.ts'
import { mirrorSolid } from '../../src/model/mirror.ts'
import type { Part } from '../../src/model/part.ts'
import { boreInPart, modelOf, onlyPart, planOf } from './model-of.ts'

const extent = { length: 100, width: 40, thickness: 20 }

const pair = onlyPart(
  modelOf(
    planOf(`    make: 2
    mirrored: true
    corners: { top-left: 8, bottom-right: { chamfer: 5 } }
    cuts:
      - { hole: front-pin, at: { left: 10, bottom: 12 }, diameter: 4 }
      - { hole: back-pin, on: back, at: { left: 30, top: 9 }, diameter: 4 }
      - { hole: left-pin, on: left, at: { front: 4, bottom: 11 }, diameter: 3, depth: 6 }
      - { hole: right-pin, on: right, at: { back: 5, top: 13 }, diameter: 3, depth: 6 }
      - { row: top-row, on: top, at: { left: 7, front: 6 }, toward: right, spacing: 9, count: 3, diameter: 2 }
      - { hole: bottom-pin, on: bottom, at: { right: 8, back: 3 }, diameter: 2 }
      - { slot: mouth, at: { left: 40, bottom: 20 }, size: 20 x 6, ends: round }
      - { notch: step, on: left, at: { bottom: 2 }, size: 9 x 7 }
      - { hole: nowhere, diameter: 2 }
`),
  ),
)

const [drawn, mirrored] = pair.pieces.map(piece => piece.solid) as [Part['drawn'], Part['drawn']]

test('what is so far from the left end in one piece is so far from the right end of the wood in the other', () => {
  for (const [i, feature] of drawn.features.entries()) {
    if (feature.shape.kind !== 'bore') continue
    const { x, y, z } = boreInPart(drawn, feature)
    const other = boreInPart(mirrored, mirrored.features[i]!)
    expect([feature.id, other.x, other.y, other.z]).toEqual([feature.id, 100 - x, y, z])
  }
})

/** Hand-made. Source: the box of the drawn piece, seen in a mirror that stands upright beside it. */
test.each([
  ['front-pin', { x: 90, y: 12 }],
  // the back is seen from behind, where the mirrored piece has its left end at the left
  ['back-pin', { x: 30, y: 31 }],
  // the end called left now lies at the right; seen from there the front edge is at the left
  ['left-pin', { x: 4, y: 11 }],
  ['right-pin', { x: 5, y: 27 }],
  ['top-row.1', { x: 93, y: 6 }],
  ['top-row.3', { x: 75, y: 6 }],
  ['bottom-pin', { x: 8, y: 3 }],
])('%s stands on its face of the mirrored piece where it is measured from the same sides', (id, centre) => {
  const shape = mirrored.features.find(f => f.id === id)!.shape
  expect(shape).toMatchObject({ kind: 'bore', centre })
})

test('every side keeps its name and what is on it', () => {
  expect(mirrored.features.map(({ id, face }) => [id, face])).toEqual(
    drawn.features.map(({ id, face }) => [id, face]),
  )
  expect(sides.map(side => mirrored.faces[side].id)).toEqual(sides)
})

test('the end called left lies at the right, and the other sides stay where they are', () => {
  const reach = (part: Part['drawn'], side: (typeof sides)[number]) => part.faces[side].pose.out
  expect(reach(mirrored, 'left')).toEqual({ x: 1, y: 0, z: 0 })
  expect(reach(mirrored, 'right')).toEqual({ x: -1, y: 0, z: 0 })
  for (const side of ['front', 'back', 'top', 'bottom'] as const) {
    expect(mirrored.faces[side].pose).toEqual(drawn.faces[side].pose)
  }
})

test('outline, slots and notches are mirrored, and an edge keeps its name', () => {
  const box = (region: Region) => regionBounds(region)
  const shapeOf = (id: string) => mirrored.features.find(f => f.id === id)!.shape as { region: Region }
  expect(box(shapeOf('mouth').region)).toEqual({ left: 40, right: 60, bottom: 20, top: 26 })
  expect(box(shapeOf('step').region)).toEqual({ left: 93, right: 100, bottom: 2, top: 11 })
  const left = mirrored.outline.outer.segments.find(s => s.tag === 'left')!
  expect([left.from.x, left.to.x]).toEqual([100, 100])
  const round = mirrored.outline.outer.segments.find(s => s.tag === 'top-left')!
  expect(round).toMatchObject({ kind: 'arc', centre: { x: 92, y: 32 }, radius: 8, turn: -1 })
})

test('what has no place has none in the mirrored piece either', () => {
  expect(mirrored.features.at(-1)).toEqual(drawn.features.at(-1))
})

test('mirrored twice is as drawn', () => {
  expect(mirrorSolid(mirrored, extent)).toEqual(drawn)
})

test('any holes mirrored twice are as drawn, within rounding', () => {
  const size = fc.double({ min: 1, max: 2000, noNaN: true })
  fc.assert(
    fc.property(
      size,
      size,
      size,
      fc.constantFrom(...sides),
      size,
      size,
      (length, width, thickness, on, a, b) => {
        const [along, across] =
          on === 'left' || on === 'right'
            ? ['front', 'bottom']
            : on === 'top' || on === 'bottom'
              ? ['left', 'front']
              : ['left', 'bottom']
        const text = planOf(
          `    cuts:\n      - { hole: pin, on: ${on}, at: { ${along}: ${a.toFixed(6)}, ${across}: ${b.toFixed(6)} }, diameter: 1 }\n`,
          `${length.toFixed(6)} x ${width.toFixed(6)} x ${thickness.toFixed(6)}`,
        )
        const part = onlyPart(modelOf(text))
        const box = { length: part.length.mm, width: part.width.mm, thickness: part.thickness.mm }
        const once = mirrorSolid(part.drawn, box)
        const twice = mirrorSolid(once, box)
        const start = boreInPart(part.drawn, part.drawn.features[0]!)
        const other = boreInPart(once, once.features[0]!)
        const back = boreInPart(twice, twice.features[0]!)
        expect(other.x).toBeCloseTo(part.length.mm - start.x, 9)
        for (const axis of ['x', 'y', 'z'] as const) expect(back[axis]).toBeCloseTo(start[axis], 9)
      },
    ),
  )
})
