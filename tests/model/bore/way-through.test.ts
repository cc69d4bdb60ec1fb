import fc from 'fast-check'
import { expect, test } from 'vitest'
import { pointInRegion } from '../../../src/geometry/measure/inside.ts'
import { axisOf, pointAlong } from '../../../src/model/bore/axis.ts'
import { wayOut, woodAlong } from '../../../src/model/bore/way-through.ts'
import { mirrorSolid } from '../../../src/model/mirror.ts'
import { faceOf, type Part, type Solid } from '../../../src/model/part.ts'
import { blockWith, boreOf } from './bores.ts'

function outOf(part: Part, solid: Solid = part.drawn) {
  const { face } = solid.features[0]!
  return wayOut(solid, { face, shape: boreOf(part, 0, solid) })
}

const near = (x: number) => expect.closeTo(x, 9)

/** A block of 60 x 40 x 30. Source: tan 45° = 1, by hand. */
test.each([
  ['front, straight', 'at: { left: 20, bottom: 10 }', 'back', [20, 10, 0], 30],
  ['top, straight', 'on: top, at: { left: 20, front: 10 }', 'bottom', [20, 0, 20], 40],
  ['left, straight', 'on: left, at: { front: 5, bottom: 10 }', 'right', [60, 10, 25], 60],
  [
    'front, toward the right',
    'at: { left: 40, bottom: 10 }, lean: { toward: right, angle: 45 }',
    'back',
    [10, 10, 0],
    30 * Math.SQRT2,
  ],
  [
    'front, near the left end',
    'at: { left: 20, bottom: 10 }, lean: { toward: right, angle: 45 }',
    'left',
    [0, 10, 10],
    20 * Math.SQRT2,
  ],
  [
    'back, toward the top',
    'on: back, at: { left: 20, bottom: 35 }, lean: { toward: top, angle: 45 }',
    'front',
    [20, 5, 30],
    30 * Math.SQRT2,
  ],
  [
    'top, toward the front',
    'on: top, at: { left: 20, front: 10 }, lean: { toward: front, angle: 45 }',
    'back',
    [20, 20, 0],
    20 * Math.SQRT2,
  ],
  [
    'left, toward the bottom',
    'on: left, at: { front: 5, bottom: 10 }, lean: { toward: bottom, angle: 45 }',
    'top',
    [30, 40, 25],
    30 * Math.SQRT2,
  ],
] as const)(
  'from the %s, a bore comes out where its axis leaves the block',
  (_, where, face, [x, y, z], distance) => {
    const out = outOf(blockWith(`hole: peg, ${where}, diameter: 2`))
    expect(out).toEqual({ face, point: { x: near(x), y: near(y), z: near(z) }, distance: near(distance) })
  },
)

test('in the mirrored piece it comes out at the mirror image, by the side of the same name', () => {
  const part = blockWith(
    'hole: peg, at: { left: 20, bottom: 10 }, diameter: 2, lean: { toward: right, angle: 45 }',
  )
  const mirrored = mirrorSolid(part.drawn, { length: 60, width: 40, thickness: 30 })
  expect(outOf(part, mirrored)).toMatchObject({
    face: 'left',
    point: { x: near(60), y: near(10), z: near(10) },
  })
})

const arch = `    outline:
      - { to: [0, 0] }
      - { to: [20, 0] }
      - { to: [20, 30] }
      - { to: [40, 30], name: soffit }
      - { to: [40, 0] }
      - { to: [60, 0] }
      - { to: [60, 20] }
      - { arc: [40, 40], radius: 20, turn: left }
      - { to: [0, 40] }
`

function archWith(where: string): Part {
  return blockWith(`hole: peg, ${where}, diameter: 2`, { more: arch })
}

test('a bore through both legs of an arch goes through two stretches of wood, and comes out of the farther one', () => {
  const part = archWith('on: left, at: { bottom: 10, front: 15 }')
  const bore = boreOf(part)
  expect(woodAlong(part.drawn, axisOf(bore, part.drawn.faces.left.pose))).toEqual([
    { from: near(0), to: near(20) },
    { from: near(40), to: near(60) },
  ])
  expect(outOf(part)).toMatchObject({ point: { x: near(60), y: near(10) }, distance: near(60) })
})

test('from a named edge it comes out across from it; by a curve, that is no face', () => {
  expect(outOf(archWith('on: soffit, at: { start: 10, front: 15 }'))).toMatchObject({
    point: { x: near(30), y: near(40), z: near(15) },
  })
  const aslant = 'on: soffit, at: { start: 10, front: 15 }, lean: { toward: end, angle: 45 }'
  const out = outOf(archWith(aslant))
  expect(out?.distance).toBeCloseTo(10 * Math.SQRT2, 9)
  const out2 = outOf(archWith('at: { left: 50, bottom: 20 }, lean: { toward: bottom, angle: 50 }'))
  expect(out2).not.toHaveProperty('face')
  expect(Math.hypot(out2!.point.x - 40, out2!.point.y - 20)).toBeCloseTo(20, 9)
})

test('a bore that begins on the box round a shaped part begins where the wood does; one that misses it has no way out', () => {
  const part = archWith('on: top, at: { left: 58, front: 15 }')
  const bore = boreOf(part)
  const [first] = woodAlong(part.drawn, axisOf(bore, part.drawn.faces.top.pose))
  // Source: Pythagoras on the circle of radius 20 about (40, 20)
  expect(first!.from).toBeCloseTo(20 - Math.sqrt(20 ** 2 - 18 ** 2), 9)
  expect(outOf(archWith('at: { left: 30, bottom: 10 }'))).toBeUndefined()
})

test('stepped along in tenths of a millimetre, the axis is in the wood just where the stretches say', () => {
  const place = fc.record({
    on: fc.constantFrom('front', 'back'),
    left: fc.integer({ min: 1, max: 59 }),
    bottom: fc.integer({ min: 1, max: 39 }),
    first: fc.integer({ min: 1, max: 40 }),
    second: fc.integer({ min: 1, max: 40 }),
    x: fc.constantFrom('left', 'right'),
    y: fc.constantFrom('top', 'bottom'),
  })
  fc.assert(
    fc.property(place, ({ on, left, bottom, first, second, x, y }) => {
      const part = archWith(
        `on: ${on}, at: { left: ${left}, bottom: ${bottom} }, lean: [{ toward: ${x}, angle: ${first} }, { toward: ${y}, angle: ${second} }]`,
      )
      const axis = axisOf(boreOf(part), faceOf(part.drawn, on).pose)
      const stretches = woodAlong(part.drawn, axis)
      for (let at = 0; at < 80; at += 0.1) {
        const p = pointAlong(axis, at)
        const slab = p.z > 0 && p.z < 30
        const inWood = slab && pointInRegion(part.drawn.outline, p) === 'inside'
        const said = stretches.some(({ from, to }) => at > from && at < to)
        const atEnd = stretches.some(
          ({ from, to }) => Math.min(Math.abs(at - from), Math.abs(at - to)) < 1e-5,
        )
        if (!atEnd) expect({ at, inWood }).toEqual({ at, inWood: said })
      }
    }),
    { numRuns: 60 },
  )
})
