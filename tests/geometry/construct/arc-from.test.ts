import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  arcByBend,
  arcByRadius,
  arcBySagitta,
  arcByTangent,
  arcThrough,
} from '../../../src/geometry/construct/arc-from.ts'
import { circleThrough } from '../../../src/geometry/construct/circle-through.ts'
import { pointAt, tangentAt } from '../../../src/geometry/measure/along.ts'
import { angleLessSine } from '../../../src/geometry/measure/area.ts'
import { segmentLength } from '../../../src/geometry/measure/length.ts'
import { nearestOnSegment } from '../../../src/geometry/measure/nearest.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { type Arc, sweep } from '../../../src/geometry/shape/segment.ts'
import { expectValue } from '../expect-value.ts'

const at = (x: number, y: number): Point => ({ x, y })

/** R = (c²/4 + h²)/2h. Source: follows from the definition; the last row is published, see below. */
test.each([
  [100, 10, 130],
  [24, 3, 25.5],
  [21, 6, 12.1875],
])('an arc over a chord of %d with a sagitta of %d has a radius of %d', (chord, sagitta, radius) => {
  const made = expectValue(arcBySagitta(at(0, 0), at(chord, 0), sagitta))
  expect(made.radius).toBeCloseTo(radius, 12)
  expect(made.turn).toBe(1)
  // counter-clockwise from left to right hangs below the chord
  expect(pointAt(made, 0.5).y).toBeCloseTo(-sagitta, 12)
  expect(pointAt(expectValue(arcBySagitta(at(0, 0), at(chord, 0), -sagitta)), 0.5).y).toBeCloseTo(sagitta, 12)
})

test('a published circular segment: angle, arc and area', () => {
  // Matheass, help page on the circle segment: chord 21, h 6 → R 12.1875, angle 118.97953°, arc 25.308373, area 89.254148
  const made = expectValue(arcBySagitta(at(0, 0), at(21, 0), 6))
  expect((sweep(made) * 180) / Math.PI).toBeCloseTo(118.97953, 5)
  expect(segmentLength(made)).toBeCloseTo(25.308373, 6)
  expect((made.radius ** 2 / 2) * angleLessSine(sweep(made))).toBeCloseTo(89.254148, 6)
})

/** Circular segments of radius 1: height by angle. Source: follows from the definition. */
test.each([
  [30, 0.03407],
  [60, 0.13397],
  [90, 0.29289],
  [120, 0.5],
])('an arc that bends by %d° on radius 1 is %d high', (degrees, height) => {
  const angle = (degrees * Math.PI) / 180
  const made = expectValue(arcByBend(at(0, 0), at(2 * Math.sin(angle / 2), 0), angle))
  expect(made.radius).toBeCloseTo(1, 12)
  expect(-pointAt(made, 0.5).y).toBeCloseTo(height, 5)
})

/** SVG 2, appendix B.2: `M0,0 A50 50 0 0 1 60,0`, y turned upward, so its sweep flag 1 runs clockwise. */
test('the lesser arc of radius 50 over 60 has the centre and sweep that SVG gives it', () => {
  const made = expectValue(arcByRadius(at(0, 0), at(60, 0), 50, -1))
  expect(made.centre.x).toBeCloseTo(30, 12)
  expect(made.centre.y).toBeCloseTo(-40, 12)
  expect((sweep(made) * 180) / Math.PI).toBeCloseTo(-73.7398, 4)
  const other = expectValue(arcByRadius(at(0, 0), at(60, 0), 50, 1))
  expect(other.centre.y).toBeCloseTo(40, 12)
})

test('the circle through (1,7) (8,6) (7,−1) has centre (4,3) and radius 5', () => {
  // source: follows from the definition, each is 5 from (4, 3)
  const found = expectValue(circleThrough(at(1, 7), at(8, 6), at(7, -1)))
  expect(found.centre.x).toBeCloseTo(4, 12)
  expect(found.centre.y).toBeCloseTo(3, 12)
  expect(found.radius).toBeCloseTo(5, 12)
  expect(expectValue(arcThrough(at(1, 7), at(8, 6), at(7, -1))).turn).toBe(-1)
})

const coordinate = fc.double({ min: -100, max: 100, noNaN: true })
const spot = fc.record({ x: coordinate, y: coordinate })

function expectArc(made: Arc, from: Point, to: Point) {
  expect(made.from).toBe(from)
  expect(made.to).toBe(to)
  const size = 1e-12 * (made.radius + 200)
  for (const end of [from, to]) {
    expect(Math.abs(Math.hypot(end.x - made.centre.x, end.y - made.centre.y) - made.radius)).toBeLessThan(
      size,
    )
  }
}

test('however an arc is given, its ends are those given and it has what was asked for', () => {
  fc.assert(
    fc.property(spot, spot, fc.double({ min: -6, max: 6, noNaN: true }), (from, to, angle) => {
      const chord = Math.hypot(to.x - from.x, to.y - from.y)
      fc.pre(chord > 0.1 && Math.abs(angle) > 0.01)
      const bent = expectValue(arcByBend(from, to, angle))
      expectArc(bent, from, to)
      expect(sweep(bent)).toBeCloseTo(angle, 8)
      const sagitta = Math.tan(angle / 4) * (chord / 2)
      const risen = expectValue(arcBySagitta(from, to, sagitta))
      expectArc(risen, from, to)
      expect(sweep(risen)).toBeCloseTo(angle, 8)
      const via = pointAt(bent, 0.4)
      const through = expectValue(arcThrough(from, via, to))
      expect(nearestOnSegment(through, via).distance).toBeLessThan(1e-8)
      expect(sweep(through)).toBeCloseTo(angle, 6)
      const left = expectValue(arcByTangent(from, tangentAt(bent, 0), to))
      expect(sweep(left)).toBeCloseTo(angle, 6)
      if (Math.abs(angle) < 3.1) {
        const turn = angle > 0 ? 1 : -1
        const sized = expectValue(arcByRadius(from, to, bent.radius, turn))
        expectArc(sized, from, to)
        expect(sweep(sized)).toBeCloseTo(angle, 6)
      }
    }),
  )
})

test('what makes no arc is a fault that says why', () => {
  const a = at(0, 0)
  const b = at(10, 0)
  expect(arcBySagitta(a, a, 1)).toMatchObject({ fault: { reason: 'no-chord' } })
  expect(arcBySagitta(a, b, 0)).toMatchObject({ fault: { reason: 'flat' } })
  expect(arcByRadius(a, b, 4.9, 1)).toMatchObject({
    fault: { reason: 'radius-too-small', facts: { least: 5 } },
  })
  expect(arcByRadius(a, b, 5 - 1e-9, 1)).toMatchObject({
    ok: true,
    value: { radius: 5, centre: { x: 5, y: 0 } },
  })
  expect(arcByRadius(a, b, Number.NaN, 1)).toMatchObject({ ok: false })
  expect(arcByBend(a, b, 0)).toMatchObject({ fault: { reason: 'flat' } })
  expect(arcByBend(a, b, 7)).toMatchObject({ fault: { reason: 'full-turn' } })
  expect(arcThrough(a, at(5, 0), b)).toMatchObject({ fault: { reason: 'in-line', operation: 'arcThrough' } })
  expect(arcThrough(a, a, b)).toMatchObject({ fault: { reason: 'no-chord' } })
  expect(arcByTangent(a, at(1, 0), b)).toMatchObject({ fault: { reason: 'flat' } })
})
