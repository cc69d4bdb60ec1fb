import fc from 'fast-check'
import { expect, test } from 'vitest'
import { arcBeziers, type Cubic } from '../../../src/geometry/approximate/beziers.ts'
import { arcChords, chordContour, chordPoints } from '../../../src/geometry/approximate/chords.ts'
import { arcByBend } from '../../../src/geometry/construct/arc-from.ts'
import { signedArea } from '../../../src/geometry/measure/area.ts'
import { circle } from '../../../src/geometry/shape/circle.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { type Arc, arc } from '../../../src/geometry/shape/segment.ts'
import { slot } from '../../../src/geometry/shape/slot.ts'
import { expectValue } from '../expect-value.ts'

const origin = { x: 0, y: 0 }

const anyArc: fc.Arbitrary<Arc> = fc
  .tuple(fc.double({ min: 0.1, max: 5000, noNaN: true }), fc.double({ min: -6.2, max: 6.2, noNaN: true }))
  .filter(([, angle]) => Math.abs(angle) > 0.05)
  .map(([chord, angle]) =>
    expectValue(arcByBend({ x: 3, y: -8 }, { x: 3 + chord * 0.6, y: -8 + chord * 0.8 }, angle)),
  )

test('chords start and end where the arc does, lie on it, and leave it by no more than the deviation', () => {
  fc.assert(
    fc.property(anyArc, fc.constantFrom(1, 0.005, 1e-5), (a, deviation) => {
      const points = arcChords(a, deviation)
      expect(points[0]).toBe(a.from)
      expect(points.at(-1)).toBe(a.to)
      let highest = 0
      let off = 0
      points.slice(1).forEach((q, i) => {
        const p = points[i]!
        const half = Math.hypot(q.x - p.x, q.y - p.y) / 2
        highest = Math.max(highest, a.radius - Math.sqrt(Math.max(0, (a.radius - half) * (a.radius + half))))
        off = Math.max(off, Math.abs(Math.hypot(q.x - a.centre.x, q.y - a.centre.y) - a.radius))
      })
      expect(highest).toBeLessThanOrEqual(deviation + 1e-11 * a.radius)
      expect(off).toBeLessThan(1e-11 * a.radius + 1e-11)
    }),
  )
})

test('no more chords are made than the deviation asks for', () => {
  // r(1 − cos(step/2)) = deviation, source: sagitta of a chord
  const half = arc({ x: 10, y: 0 }, { x: -10, y: 0 }, origin, 1)
  const step = 2 * Math.acos(1 - 0.01 / 10)
  expect(arcChords(half, 0.01)).toHaveLength(Math.ceil(Math.PI / step) + 1)
  // even a coarse deviation leaves a square of a circle
  expect(chordPoints(circle(origin, 1), 100)).toHaveLength(4)
})

test('the contour of chords is closed as before, keeps lines and tags, and shares its points', () => {
  const shape = slot(origin, { x: 40, y: 0 }, 20, 'slot').outer
  const made = chordContour(shape, 0.001)
  expect(made.segments[0]).toBe(shape.segments[0])
  made.segments.forEach((s, i) => {
    expect(s.tag).toBe('slot')
    expect(s.to).toBe(made.segments[(i + 1) % made.segments.length]!.from)
  })
  // inside by at most the deviation along the arcs, 20π long
  expect(signedArea(shape) - signedArea(made)).toBeGreaterThan(0)
  expect(signedArea(shape) - signedArea(made)).toBeLessThan(0.001 * 20 * Math.PI)
  expect(chordPoints({ ...shape, closed: false }, 0.001)).toHaveLength(made.segments.length + 1)
})

test('a deviation of nothing, or one that makes a million chords, is refused', () => {
  const half = arc({ x: 1e4, y: 0 }, { x: -1e4, y: 0 }, origin, 1)
  expect(() => arcChords(half, 0)).toThrow(RangeError)
  expect(() => arcChords(half, Number.NaN)).toThrow(RangeError)
  expect(() => arcChords(half, 1e-9)).toThrow(RangeError)
})

function bezierPoint(c: Cubic, t: number): Point {
  const mix = (k: 'x' | 'y') =>
    (1 - t) ** 3 * c.from[k] +
    3 * (1 - t) ** 2 * t * c.control1[k] +
    3 * (1 - t) * t * t * c.control2[k] +
    t ** 3 * c.to[k]
  return { x: mix('x'), y: mix('y') }
}

test('the curves of an arc follow one another, none is wider than 30°, and they leave it by under 4e-7 of its radius', () => {
  fc.assert(
    fc.property(anyArc, a => {
      const curves = arcBeziers(a)
      expect(curves[0]!.from).toBe(a.from)
      expect(curves.at(-1)!.to).toBe(a.to)
      curves.forEach((c, i) => {
        if (i > 0) expect(c.from).toBe(curves[i - 1]!.to)
        const chord = Math.hypot(c.to.x - c.from.x, c.to.y - c.from.y)
        expect(chord).toBeLessThanOrEqual(2 * a.radius * Math.sin(Math.PI / 12) * (1 + 1e-9))
        for (let k = 1; k < 50; k++) {
          const p = bezierPoint(c, k / 50)
          expect(Math.abs(Math.hypot(p.x - a.centre.x, p.y - a.centre.y) - a.radius)).toBeLessThan(
            4e-7 * a.radius,
          )
        }
      })
    }),
  )
})

test('a quarter circle takes three curves, and one curve for it would be out by 0.0002725 of the radius', () => {
  // source: the usual constant k = 0.5522847498, its error follows from the definition
  const quarter = arc({ x: 1, y: 0 }, { x: 0, y: 1 }, origin, 1)
  expect(arcBeziers(quarter)).toHaveLength(3)
  const k = (4 / 3) * Math.tan(Math.PI / 8)
  expect(k).toBeCloseTo(0.5522847498, 9)
  const one: Cubic = {
    from: quarter.from,
    control1: { x: 1, y: k },
    control2: { x: k, y: 1 },
    to: quarter.to,
  }
  let worst = 0
  for (let i = 0; i <= 1000; i++) {
    const p = bezierPoint(one, i / 1000)
    worst = Math.max(worst, Math.abs(Math.hypot(p.x, p.y) - 1))
  }
  expect(worst).toBeCloseTo(0.0002725, 7)
})
