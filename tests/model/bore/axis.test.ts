import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Axis, axisOf, pointAlong } from '../../../src/model/bore/axis.ts'
import { mirrorSolid } from '../../../src/model/mirror.ts'
import { faceOf, type Part } from '../../../src/model/part.ts'
import type { Point3 } from '../../../src/model/pose.ts'
import { blockWith, boreOf } from './bores.ts'

const sides = ['front', 'back', 'left', 'right', 'top', 'bottom'] as const
const extent = { length: 60, width: 40, thickness: 30 }

function axesOf(part: Part, solid = part.drawn): readonly Axis[] {
  return solid.features.map((feature, i) => axisOf(boreOf(part, i, solid), faceOf(solid, feature.face).pose))
}

function expectNear(a: Point3, b: Point3, digits = 12): void {
  for (const axis of ['x', 'y', 'z'] as const) expect(a[axis]).toBeCloseTo(b[axis], digits)
}

/** The direction in the part that leads to each of its sides. */
const toward: Readonly<Record<(typeof sides)[number], Point3>> = {
  right: { x: 1, y: 0, z: 0 },
  left: { x: -1, y: 0, z: 0 },
  top: { x: 0, y: 1, z: 0 },
  bottom: { x: 0, y: -1, z: 0 },
  front: { x: 0, y: 0, z: 1 },
  back: { x: 0, y: 0, z: -1 },
}

const runs = [
  ['front', 'right', 'top'],
  ['back', 'left', 'bottom'],
  ['left', 'front', 'top'],
  ['right', 'back', 'top'],
  ['top', 'right', 'front'],
  ['bottom', 'left', 'back'],
] as const

test.each(runs)('on the %s a rod leans out toward the %s, and the bit goes in the other way', (on, side) => {
  const part = blockWith(
    `hole: peg, on: ${on}, at: center, diameter: 4, lean: { toward: ${side}, angle: 30 }`,
  )
  const [{ into } = { into: toward.front }] = axesOf(part)
  const [out, aside] = [toward[on], toward[side]]
  const inward = (axis: 'x' | 'y' | 'z') => -(out[axis] * Math.cos(Math.PI / 6) + aside[axis] * 0.5)
  expectNear(into, { x: inward('x'), y: inward('y'), z: inward('z') })
})

test.each(runs)(
  'two leans on the %s, toward %s and %s, are one turn after another of a square axis',
  (on, a, b) => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 40 }), (first, second) => {
        const part = blockWith(
          `hole: peg, on: ${on}, at: center, diameter: 4, lean: [{ toward: ${a}, angle: ${first} }, { toward: ${b}, angle: ${second} }]`,
        )
        const [{ into } = { into: toward.front }] = axesOf(part)
        // tilted by the first; then by what the second comes to in the plane that the first has tilted
        const one = (first * Math.PI) / 180
        const then = Math.atan(Math.tan((second * Math.PI) / 180) * Math.cos(one))
        const axes = ['x', 'y', 'z'] as const
        const tilted = axes.map(k => toward[on][k] * Math.cos(one) + toward[a][k] * Math.sin(one))
        const [x, y, z] = axes.map((k, i) => -(tilted[i]! * Math.cos(then) + toward[b][k] * Math.sin(then)))
        expectNear(into, { x: x!, y: y!, z: z! })
      }),
      { numRuns: 20 },
    )
  },
)

test('a straight bore goes square into its face, and one that hardly leans nearly so', () => {
  for (const on of sides) {
    const [straight] = axesOf(blockWith(`hole: peg, on: ${on}, at: center, diameter: 4`))
    const [out] = [toward[on]]
    expect(straight!.into).toEqual({ x: 0 - out.x, y: 0 - out.y, z: 0 - out.z })
    const aside = runs.find(([face]) => face === on)![1]
    const [leaning] = axesOf(
      blockWith(`hole: peg, on: ${on}, at: center, diameter: 4, lean: { toward: ${aside}, angle: 0.00001 }`),
    )
    expectNear(leaning!.into, straight!.into, 6)
  }
})

const leaning = blockWith(
  'hole: peg, on: [left, right], at: { front: 9, bottom: 12 }, diameter: 4, lean: [{ toward: front, angle: 12 }, { toward: top, angle: 7 }]',
)
const everywhere: readonly Part[] = [
  leaning,
  ...runs.map(([on, a, b]) =>
    blockWith(
      `hole: peg, on: ${on}, at: center, diameter: 4, lean: [{ toward: ${a}, angle: 20 }, { toward: ${b}, angle: 5 }]`,
    ),
  ),
]

test('the axis in the mirrored piece is the mirror image of the drawn one', () => {
  for (const part of everywhere) {
    const images = axesOf(part, mirrorSolid(part.drawn, extent))
    for (const [i, { from, into }] of axesOf(part).entries()) {
      expectNear(images[i]!.from, { ...from, x: 60 - from.x })
      expectNear(images[i]!.into, { ...into, x: -into.x })
    }
  }
})

test('the mirror of the mirror has the drawn axis, and a lean keeps the names of its sides', () => {
  for (const part of everywhere) {
    const mirrored = mirrorSolid(part.drawn, extent)
    const twice = axesOf(part, mirrorSolid(mirrored, extent))
    for (const [i, { from, into }] of axesOf(part).entries()) {
      expectNear(twice[i]!.from, from)
      expectNear(twice[i]!.into, into)
      expect(boreOf(part, i, mirrored).lean!.given).toEqual(boreOf(part, i).lean!.given)
    }
  }
})

test('along the axis, millimetres are millimetres', () => {
  const [axis] = axesOf(leaning)
  const p = pointAlong(axis!, 7)
  expect(Math.hypot(p.x - axis!.from.x, p.y - axis!.from.y, p.z - axis!.from.z)).toBeCloseTo(7, 12)
})
