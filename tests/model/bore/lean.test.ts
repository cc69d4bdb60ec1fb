import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { DistanceFrom } from '../../../src/finding/face-name.ts'
import { resultantLean, sightLine, tableTilt } from '../../../src/model/bore/lean.ts'
import { degrees, radians } from '../../../src/number/degrees.ts'
import { boreWith } from './bores.ts'

const ways = {
  right: { x: 1, y: 0 },
  left: { x: -1, y: 0 },
  top: { x: 0, y: 1 },
  bottom: { x: 0, y: -1 },
} as const

const given = (toward: DistanceFrom & keyof typeof ways, angle: number) => ({
  toward,
  direction: ways[toward],
  angle,
})

/**
 * Source: by definition, another way round: the rod is the line in which the two planes meet that it shows its leans
 * in, so it is the cross product of their normals, (cos a, 0, −sin a) × (0, cos b, −sin b).
 */
test.each([
  // rake, splay, resultant, sight line from the first
  [5, 5, 7.0532, 45],
  [10, 10, 14.0019, 45],
  [8, 5, 9.3999, 31.9028],
  [15, 7, 16.4225, 24.6191],
  [12, 6, 13.3398, 26.3113],
  [20, 10, 22.02, 25.8481],
  [30, 45, 49.1066, 60],
])('leans of %d° and %d° are together one of %d°, seen along a line at %d°', (a, b, angle, sight) => {
  const lean = resultantLean([given('right', radians(a)), given('top', radians(b))])
  expect(degrees(lean.angle)).toBeCloseTo(angle, 4)
  expect(degrees(lean.toward)).toBeCloseTo(sight, 4)
  expect(degrees(tableTilt({ lean }))).toBeCloseTo(angle, 4)
})

test('a single lean is its own resultant, and its sight line leads to the side it names', () => {
  for (const [toward, at] of [
    ['right', 0],
    ['top', 90],
    ['left', 180],
    ['bottom', -90],
  ] as const) {
    const lean = resultantLean([given(toward, radians(8))])
    expect(degrees(lean.toward)).toBe(at)
    expect(lean.angle).toBe(radians(8))
    expect(sightLine(lean)).toEqual({ from: toward, angle: 0 })
  }
})

test('the sight line of two leans is told from the side of the first toward that of the second', () => {
  const { from, to, angle } = sightLine(
    resultantLean([given('left', radians(8)), given('bottom', radians(5))]),
  )
  expect({ from, to }).toEqual({ from: 'left', to: 'bottom' })
  expect(degrees(angle)).toBeCloseTo(31.9028, 4)
})

test('looked at square to either direction, a rod with two leans shows that lean', () => {
  const acute = fc.double({ min: 0.001, max: 1, noNaN: true })
  fc.assert(
    fc.property(acute, acute, (a, b) => {
      const { angle, toward } = resultantLean([given('left', a), given('top', b)])
      const rod = { x: Math.tan(angle) * Math.cos(toward), y: Math.tan(angle) * Math.sin(toward) }
      expect(Math.atan(-rod.x)).toBeCloseTo(a, 12)
      expect(Math.atan(rod.y)).toBeCloseTo(b, 12)
    }),
  )
})

test('a hole without a lean is bored on a level table', () => {
  expect(tableTilt(boreWith('diameter: 4'))).toBe(0)
})

test.each([
  ['at: center, lean: { toward: right, angle: 8 }', 0],
  ['at: center, lean: { toward: top, angle: 8 }', 90],
  ['on: back, at: center, lean: { toward: right, angle: 8 }', 180],
  ['on: top, at: center, lean: { toward: back, angle: 8 }', 90],
  ['on: bottom, at: center, lean: { toward: back, angle: 8 }', -90],
  ['on: left, at: center, lean: { toward: front, angle: 8 }', 0],
  ['on: right, at: center, lean: { toward: front, angle: 8 }', 180],
])('{ %s } leans at %d° on its face as it is seen from outside', (where, at) => {
  const { lean } = boreWith('diameter: 4', where)
  expect(degrees(lean!.toward)).toBeCloseTo(at, 12)
})
