import fc from 'fast-check'
import { expect, test } from 'vitest'
import { pointAt } from '../../../src/geometry/measure/along.ts'
import { contourBounds } from '../../../src/geometry/measure/bounds.ts'
import type { Contour } from '../../../src/geometry/shape/contour.ts'
import { distance } from '../../../src/geometry/shape/point.ts'
import { type Axis, axisOf } from '../../../src/model/bore/axis.ts'
import { mouthOval, ovalContour, rimOval } from '../../../src/model/bore/rim.ts'
import type { Bore } from '../../../src/model/feature.ts'
import { type Point3, toPart } from '../../../src/model/pose.ts'
import { radians } from '../../../src/number/degrees.ts'
import { printable } from '../../../src/number/tolerance.ts'
import { blockWith, boreOf } from './bores.ts'

/** How far a place is from an axis, and how far up it, against the bit's way. */
function seenFrom({ from, into }: Axis, p: Point3) {
  const d = { x: p.x - from.x, y: p.y - from.y, z: p.z - from.z }
  const along = d.x * into.x + d.y * into.y + d.z * into.z
  return { aside: Math.sqrt(Math.max(0, d.x ** 2 + d.y ** 2 + d.z ** 2 - along ** 2)), up: -along }
}

/** Sixteen places on every edge of a contour. */
function samples({ segments }: Contour) {
  return segments.flatMap(s => Array.from({ length: 16 }, (_, i) => pointAt(s, i / 16)))
}

const faces = [
  ['front', 'right', 'bottom'],
  ['left', 'back', 'top'],
  ['top', 'left', 'front'],
] as const

const leaning = fc
  .record({
    face: fc.constantFrom(...faces),
    first: fc.integer({ min: 1, max: 40 }),
    second: fc.integer({ min: 1, max: 30 }),
    diameter: fc.integer({ min: 1, max: 12 }),
  })
  .map(({ face: [on, a, b], first, second, diameter }) => ({
    hole: `hole: peg, on: ${on}, at: center, diameter: ${diameter}, lean: [{ toward: ${a}, angle: ${first} }, { toward: ${b}, angle: ${second} }]`,
    on,
    diameter,
    resultant: Math.hypot(Math.tan(radians(first)), Math.tan(radians(second))),
  }))

test('every point of the ellipse where a leaning hole enters is as far from its axis as the hole is wide', () => {
  fc.assert(
    fc.property(leaning, ({ hole, on, diameter }) => {
      const part = blockWith(hole)
      const { pose } = part.drawn.faces[on]
      const bore = boreOf(part)
      for (const p of samples(ovalContour(rimOval(bore)))) {
        const { aside } = seenFrom(axisOf(bore, pose), toPart(pose, p))
        expect(Math.abs(aside - diameter / 2)).toBeLessThanOrEqual(printable / 10)
      }
    }),
    { numRuns: 40 },
  )
})

test('the ellipse is longer along the sight line by the cosine of the lean, and as wide as the bit across it', () => {
  const bore = boreOf(
    blockWith('hole: peg, at: center, diameter: 10, lean: { toward: top, angle: 60 - 1 / 64 }'),
  )
  const { along, across, angle } = rimOval(bore)
  expect(along).toBeCloseTo(5 / Math.cos(radians(60 - 1 / 64)), 12)
  expect(across).toBe(5)
  expect(angle).toBeCloseTo(Math.PI / 2, 15)
})

test('a straight hole enters by a circle, and one that hardly leans by nearly the same', () => {
  const straight = boreOf(blockWith('hole: peg, at: center, diameter: 10'))
  expect(rimOval(straight)).toEqual({ centre: straight.centre, along: 5, across: 5, angle: 0 })
  const hardly = boreOf(
    blockWith('hole: peg, at: center, diameter: 10, lean: { toward: left, angle: 0.001 }'),
  )
  for (const p of samples(ovalContour(rimOval(hardly))))
    expect(distance(p, straight.centre)).toBeCloseTo(5, 8)
})

test('the mouth of a leaning counterbore is the ellipse of its own diameter', () => {
  const bore = boreOf(
    blockWith('hole: peg, at: center, diameter: 4, counterbore: 9 x 6, lean: { toward: left, angle: 20 }'),
  )
  const { along, across } = mouthOval(bore)
  expect([along, across]).toEqual([4.5 / Math.cos(radians(20)), 4.5])
})

/** With a countersink that closes on the face: half its angle and the lean stay under 80°, else the plan is refused. */
const sunk = fc
  .record({ given: leaning, cone: fc.constantFrom(60, 82, 90), wider: fc.integer({ min: 1, max: 4 }) })
  .filter(({ given, cone }) => Math.atan(given.resultant) + radians(cone / 2) < radians(80))

test('every point of the mouth of a countersink lies on its cone, however it leans', () => {
  fc.assert(
    fc.property(sunk, ({ given, cone, wider }) => {
      const mouth = `countersink: { diameter: ${given.diameter + wider}, angle: ${cone} }`
      const part = blockWith(`${given.hole}, ${mouth}`, { size: '200 x 200 x 200' })
      const { pose } = part.drawn.faces[given.on]
      const bore: Bore = boreOf(part)
      for (const p of samples(ovalContour(mouthOval(bore)))) {
        const { aside, up } = seenFrom(axisOf(bore, pose), toPart(pose, p))
        const half = radians(cone / 2)
        const radius = (given.diameter + wider) / 2 + up * Math.tan(half)
        // aslant to the cone the arcs are no farther off than on the face
        expect(Math.abs(aside - radius) * Math.cos(half)).toBeLessThanOrEqual(printable / 10)
      }
    }),
    { numRuns: 40 },
  )
})

test('the largest hole that a plan may ask for can be followed with arcs at the steepest lean', () => {
  const bore = boreOf(
    blockWith('hole: peg, at: center, diameter: 10000, lean: { toward: left, angle: 59.9 }', {
      size: '9000 x 9000 x 9000',
    }),
  )
  const contour = ovalContour(rimOval(bore))
  expect(contour.segments.length).toBeLessThan(2000)
})

test('a hole drawn as small as a dot is round: the ellipse of one of 0.5 mm that leans, at 1:100', () => {
  const across = 0.25 / 100
  const oval = { centre: { x: 3, y: 4 }, along: across / Math.cos(radians(30)), across, angle: 1 }
  for (const scale of [1, 2, 0.5, 0.1]) {
    const drawn = ovalContour({ ...oval, along: oval.along * scale, across: oval.across * scale })
    const { left, right } = contourBounds(drawn)
    expect(right - left).toBeLessThanOrEqual(2 * oval.along * scale + 0.001)
    expect(right - left).toBeGreaterThanOrEqual(2 * oval.across * scale - 0.001)
  }
  const twoDegrees = { centre: { x: 0, y: 0 }, along: 0.005003047721494108, across: 0.005, angle: 0 }
  expect(ovalContour(twoDegrees).closed).toBe(true)
})
