import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fitCircle } from '../../../src/geometry/fit/circle.ts'
import { fitLine } from '../../../src/geometry/fit/line.ts'
import { fitRigid, fitSimilarity } from '../../../src/geometry/fit/pattern.ts'
import { apply, compose, scale, shift, turn } from '../../../src/geometry/shape/matrix.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { expectValue } from '../expect-value.ts'

const points = (...xy: readonly number[]): Point[] =>
  Array.from({ length: xy.length / 2 }, (_, i) => ({ x: xy[2 * i]!, y: xy[2 * i + 1]! }))

test('the least-squares circle of a published example', () => {
  // Gander, Golub, Strebel, BIT 34, 1994
  const found = expectValue(fitCircle(points(1, 7, 2, 6, 5, 8, 7, 7, 9, 5, 3, 7)))
  expect(found.centre.x).toBeCloseTo(4.739782, 6)
  expect(found.centre.y).toBeCloseTo(2.983533, 6)
  expect(found.radius).toBeCloseTo(4.714226, 6)
})

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true })

test('points of an arc give its circle, wherever it lies and however little of it there is', () => {
  fc.assert(
    fc.property(
      real(-1e4, 1e4),
      real(-1e4, 1e4),
      real(1, 500),
      real(0, 6),
      real(0.3, 6),
      (x, y, r, start, width) => {
        const on = Array.from({ length: 12 }, (_, i) => {
          const t = start + (width * i) / 11
          return { x: x + r * Math.cos(t), y: y + r * Math.sin(t) }
        })
        const found = expectValue(fitCircle(on))
        expect(Math.hypot(found.centre.x - x, found.centre.y - y)).toBeLessThan(1e-6)
        expect(Math.abs(found.radius - r)).toBeLessThan(1e-6)
        expect(found.worst).toBeLessThan(1e-8)
      },
    ),
  )
})

test('no circle beside the fitted one has a smaller sum of squares, and residuals are positive outside', () => {
  const noise = fc.array(real(-0.5, 0.5), { minLength: 10, maxLength: 30 })
  fc.assert(
    fc.property(noise, real(1, 6), (errors, width) => {
      const measured = errors.map((e, i) => {
        const t = (width * i) / errors.length
        return { x: 5 + (20 + e) * Math.cos(t), y: (20 + e) * Math.sin(t) }
      })
      const { centre, radius, rms, residuals } = expectValue(fitCircle(measured))
      const sum = (x: number, y: number, r: number) =>
        Math.sqrt(measured.reduce((s, p) => s + (Math.hypot(p.x - x, p.y - y) - r) ** 2, 0) / measured.length)
      expect(sum(centre.x, centre.y, radius)).toBeCloseTo(rms, 12)
      for (const step of [1e-3, -1e-3, 0.1, -0.1]) {
        expect(sum(centre.x + step, centre.y, radius)).toBeGreaterThanOrEqual(rms)
        expect(sum(centre.x, centre.y + step, radius)).toBeGreaterThanOrEqual(rms)
        expect(sum(centre.x, centre.y, radius + step)).toBeGreaterThanOrEqual(rms)
      }
      const p = measured[0]!
      expect(residuals[0]).toBeCloseTo(Math.hypot(p.x - centre.x, p.y - centre.y) - radius, 12)
    }),
  )
})

test('points that hold no circle are a fault', () => {
  expect(fitCircle(points(0, 0, 1, 1))).toMatchObject({ fault: { reason: 'few-points' } })
  expect(fitCircle(points(0, 0, 1, 1, 2, 2, 7, 7))).toMatchObject({ fault: { reason: 'in-line' } })
  expect(fitCircle(points(3, 3, 3, 3, 3, 3))).toMatchObject({ fault: { reason: 'one-place' } })
})

test('the line that fits: through the mean, along the scatter, residuals positive to its left', () => {
  const found = expectValue(fitLine(points(0, 1, 10, -1, 20, -1, 30, 1)))
  expect(found.point).toEqual({ x: 15, y: 0 })
  expect(found.direction.x).toBeCloseTo(1, 12)
  expect(found.residuals).toEqual([1, -1, -1, 1])
  expect(found).toMatchObject({ rms: 1, worst: 1, worstPoint: 0 })
  const back = expectValue(fitLine(points(30, 1, 20, -1, 10, -1, 0, 1)))
  expect(back.direction.x).toBeCloseTo(-1, 12)
  expect(back.residuals[0]).toBeCloseTo(-1, 12)
  expect(fitLine(points(1, 1))).toMatchObject({ fault: { reason: 'few-points' } })
  expect(fitLine(points(1, 1, 1, 1))).toMatchObject({ fault: { reason: 'one-place' } })
})

test('an upright line fits as well as a level one', () => {
  const found = expectValue(fitLine(points(5, 0, 5, 9, 5, 4)))
  expect(Math.abs(found.direction.y)).toBeCloseTo(1, 12)
  expect(found.worst).toBeLessThan(1e-12)
})

test('two known patterns: a 3-4-5 turn with nothing left over, and a square out of true', () => {
  // source: both follow from the definition
  const exact = expectValue(fitRigid(points(0, 0, 5, 0, 0, 5), points(1, 2, 4, 6, -3, 5)))
  expect((exact.turn * 180) / Math.PI).toBeCloseTo(53.130102, 6)
  expect(exact.shift.x).toBeCloseTo(1, 12)
  expect(exact.shift.y).toBeCloseTo(2, 12)
  expect(exact.rms).toBeLessThan(1e-12)
  const square = expectValue(
    fitRigid(points(0, 0, 10, 0, 10, 10, 0, 10), points(0, 0, 10, 0, 10, 10.4, 0, 9.6)),
  )
  expect((square.turn * 180) / Math.PI).toBeCloseTo(1.145763, 6)
  expect(square.rms).toBeCloseTo(0.244953, 6)
})

test('a moved and scaled pattern is found again; a rigid fit keeps its size', () => {
  const pattern = fc.array(fc.record({ x: real(-50, 50), y: real(-50, 50) }), { minLength: 3, maxLength: 9 })
  fc.assert(
    fc.property(pattern, real(-3.1, 3.1), real(-500, 500), real(0.2, 5), (from, angle, x, factor) => {
      const spread = spreadOf(from)
      fc.pre(spread > 1)
      const moved = compose(compose(scale(factor), turn(angle)), shift(x, -x))
      const found = expectValue(
        fitSimilarity(
          from,
          from.map(p => apply(moved, p)),
        ),
      )
      expect(found.worst).toBeLessThan(1e-9)
      expect(found.scale).toBeCloseTo(factor, 9)
      expect(found.turn).toBeCloseTo(angle, 9)
      for (const p of from) {
        const q = apply(found.matrix, p)
        expect(Math.hypot(q.x - apply(moved, p).x, q.y - apply(moved, p).y)).toBeLessThan(1e-9)
      }
      const rigid = expectValue(
        fitRigid(
          from,
          from.map(p => apply(moved, p)),
        ),
      )
      expect(rigid.scale).toBe(1)
      expect(rigid.turn).toBeCloseTo(angle, 9)
    }),
  )
})

function spreadOf(from: readonly Point[]): number {
  const first = from[0]!
  return Math.max(...from.map(p => Math.hypot(p.x - first.x, p.y - first.y)))
}

test('patterns that do not match are a fault', () => {
  expect(fitRigid(points(0, 0), points(0, 0, 1, 1))).toMatchObject({
    fault: { reason: 'unequal', operation: 'fitRigid' },
  })
  expect(fitRigid(points(0, 0), points(0, 0))).toMatchObject({ fault: { reason: 'few-points' } })
  expect(fitSimilarity(points(1, 1, 1, 1), points(0, 0, 5, 5))).toMatchObject({
    fault: { reason: 'no-turn' },
  })
})
