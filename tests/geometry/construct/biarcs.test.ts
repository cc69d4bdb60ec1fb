import fc from 'fast-check'
import { expect, test } from 'vitest'
import { biarc } from '../../../src/geometry/construct/biarc.ts'
import { biarcsOfCurve, biarcsThrough } from '../../../src/geometry/construct/biarcs.ts'
import { ellipse } from '../../../src/geometry/construct/ellipse.ts'
import { pointAt, tangentAt } from '../../../src/geometry/measure/along.ts'
import { signedArea } from '../../../src/geometry/measure/area.ts'
import { contourBounds } from '../../../src/geometry/measure/bounds.ts'
import { contourLength } from '../../../src/geometry/measure/length.ts'
import { nearestOnContour } from '../../../src/geometry/measure/nearest.ts'
import type { Contour } from '../../../src/geometry/shape/contour.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { expectValue } from '../expect-value.ts'

const at = (x: number, y: number): Point => ({ x, y })

function expectSmooth({ segments, closed }: Contour, slack = 1e-6) {
  for (let i = closed ? 0 : 1; i < segments.length; i++) {
    const before = segments.at(i - 1)!
    const after = segments[i]!
    expect(before.to).toBe(after.from)
    const u = tangentAt(before, 1)
    const v = tangentAt(after, 0)
    expect(Math.abs(u.x * v.y - u.y * v.x)).toBeLessThan(slack)
    expect(u.x * v.x + u.y * v.y).toBeGreaterThan(0)
  }
}

test('two arcs leave and arrive as asked and run smoothly into each other', () => {
  const angle = fc.double({ min: -1.4, max: 1.4, noNaN: true })
  fc.assert(
    fc.property(angle, angle, (a, b) => {
      const leaving = at(Math.cos(a), Math.sin(a))
      const arriving = at(Math.cos(b), Math.sin(b))
      const pair = biarc(at(0, 0), leaving, at(10, 0), arriving)!
      expectSmooth({ segments: pair, closed: false })
      // a flat half is a line along its chord, which may differ by 4 × coincident over half the way
      expect(tangentAt(pair[0], 0).y).toBeCloseTo(leaving.y, 5)
      expect(tangentAt(pair[1], 1).y).toBeCloseTo(arriving.y, 5)
    }),
  )
  expect(biarc(at(0, 0), at(1, 0), at(0, 0), at(1, 0))).toBeUndefined()
  expect(biarc(at(0, 0), at(-1, 0), at(10, 0), at(-1, 0))).toBeUndefined()
})

/**
 * The distance from a point to an ellipse at the origin, by Newton steps for the foot's parameter from the best
 * of 400 starts: nothing of the kernel's is in it.
 */
function distanceToEllipse(a: number, b: number, p: Point): number {
  const away = (t: number) => Math.hypot(a * Math.cos(t) - p.x, b * Math.sin(t) - p.y)
  let t = 0
  for (let i = 1; i < 400; i++) if (away((i * Math.PI) / 200) < away(t)) t = (i * Math.PI) / 200
  for (let i = 0; i < 20; i++) {
    const x = a * Math.cos(t)
    const y = b * Math.sin(t)
    const slope = (x - p.x) * -a * Math.sin(t) + (y - p.y) * b * Math.cos(t)
    const curve = a * a * Math.sin(t) ** 2 + b * b * Math.cos(t) ** 2 - (x - p.x) * x - (y - p.y) * y
    t -= slope / curve
  }
  return away(t)
}

test.each([
  [50, 30, 0.005],
  [50, 30, 0.0005],
  [30, 50, 0.1],
  [100, 4, 0.005],
  [10, 9.99, 0.0005],
  [400, 300, 0.0005],
])(
  'an ellipse %d by %d is within %d mm of its arcs, both ways, measured independently',
  (a, b, deviation) => {
    const made = expectValue(ellipse(at(0, 0), a, b, 0, deviation, 'hole'))
    expectSmooth(made, 1e-5)
    expect(made.segments.every(s => s.tag === 'hole')).toBe(true)
    // from the arcs to the ellipse
    for (const s of made.segments) {
      for (let i = 0; i < 40; i++) expect(distanceToEllipse(a, b, pointAt(s, i / 40))).toBeLessThan(deviation)
    }
    // and from the ellipse to the arcs
    for (let i = 0; i < 1000; i++) {
      const t = (i * 2 * Math.PI) / 1000
      const p = at(a * Math.cos(t), b * Math.sin(t))
      expect(nearestOnContour(made, p)!.distance).toBeLessThan(deviation)
    }
    // closed formula for the area, and Ramanujan's second approximation of the perimeter (from memory)
    const h = ((a - b) / (a + b)) ** 2
    const perimeter = Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)))
    expect(Math.abs(signedArea(made) - Math.PI * a * b)).toBeLessThan(perimeter * deviation)
    expect(Math.abs(contourLength(made) / perimeter - 1)).toBeLessThan(1e-3)
    const { left, bottom, right, top } = contourBounds(made)
    expect([left, bottom, right, top].map(v => Math.round(v * 1e9) / 1e9)).toEqual([-a, -b, a, b])
  },
)

test('an ellipse leans by its angle about its centre; equal axes give a circle; a length below nothing throws', () => {
  const leaning = expectValue(ellipse(at(7, 9), 20, 10, Math.PI / 6, 0.001))
  const tip = at(7 + 20 * Math.cos(Math.PI / 6), 9 + 10)
  expect(nearestOnContour(leaning, tip)!.distance).toBeLessThan(1e-9)
  expect(expectValue(ellipse(at(0, 0), 5, 5, 1, 0.001)).segments).toHaveLength(2)
  expect(() => ellipse(at(0, 0), 5, -1, 0, 0.001)).toThrow(RangeError)
})

test('points on a circle give that circle, in the fewest arcs', () => {
  const points = Array.from({ length: 90 }, (_, i) => at(3 + 50 * Math.cos(i / 15), 50 * Math.sin(i / 15)))
  const made = expectValue(biarcsThrough(points, 0.001))
  expect(made.segments.length).toBeLessThanOrEqual(6)
  for (const s of made.segments) if (s.kind === 'arc') expect(s.radius).toBeCloseTo(50, 6)
})

test('points of a smooth curve are passed within the deviation, with few arcs, and smoothly', () => {
  const wave = fc.tuple(
    fc.double({ min: 5, max: 30, noNaN: true }),
    fc.double({ min: 0, max: 10, noNaN: true }),
    fc.constantFrom(0.1, 0.01, 0.001),
  )
  fc.assert(
    fc.property(wave, ([length, height, deviation]) => {
      const points = Array.from({ length: 400 }, (_, i) => at(i / 4, height * Math.sin(i / 4 / length)))
      const made = expectValue(biarcsThrough(points, deviation))
      // a half that is nearly straight is a line along its chord
      expectSmooth(made, 1e-4)
      expect(made.segments.length).toBeLessThan(200)
      for (const p of points) expect(nearestOnContour(made, p)!.distance).toBeLessThanOrEqual(deviation)
    }),
    { numRuns: 30 },
  )
})

test('a closed line of arcs closes smoothly', () => {
  const points = Array.from({ length: 200 }, (_, i) => {
    const t = (i * 2 * Math.PI) / 200
    const r = 40 + 6 * Math.cos(3 * t)
    return at(r * Math.cos(t), r * Math.sin(t))
  })
  const made = expectValue(biarcsThrough(points, 0.01, true))
  expect(made.closed).toBe(true)
  expectSmooth(made, 1e-4)
  for (const p of points) expect(nearestOnContour(made, p)!.distance).toBeLessThanOrEqual(0.01)
  // area of r = a + b·cos 3t: π(a² + b²/2)
  expect(Math.abs(signedArea(made) - Math.PI * (1600 + 18))).toBeLessThan(contourLength(made) * 0.01)
})

test('a cubic Bézier curve becomes arcs within the deviation; a cusp is a fault', () => {
  const cubic = (p: readonly [Point, Point, Point, Point]) => {
    const mix = (t: number, k: 'x' | 'y') =>
      (1 - t) ** 3 * p[0][k] +
      3 * (1 - t) ** 2 * t * p[1][k] +
      3 * (1 - t) * t * t * p[2][k] +
      t ** 3 * p[3][k]
    const slope = (t: number, k: 'x' | 'y') =>
      (1 - t) ** 2 * (p[1][k] - p[0][k]) + 2 * (1 - t) * t * (p[2][k] - p[1][k]) + t * t * (p[3][k] - p[2][k])
    return {
      pointAt: (t: number) => at(mix(t, 'x'), mix(t, 'y')),
      directionAt: (t: number) => at(slope(t, 'x'), slope(t, 'y')),
    }
  }
  const curve = cubic([at(0, 0), at(20, 60), at(50, -40), at(80, 10)])
  const made = expectValue(biarcsOfCurve(curve, 0.005))
  expectSmooth(made, 1e-4)
  for (let i = 0; i <= 3000; i++) {
    expect(nearestOnContour(made, curve.pointAt(i / 3000))!.distance).toBeLessThan(0.005)
  }
  const cusp = cubic([at(0, 0), at(10, 10), at(0, 10), at(10, 0)])
  const stopping = { ...cusp, directionAt: (t: number) => (t === 0.5 ? at(0, 0) : cusp.directionAt(t)) }
  expect(biarcsOfCurve(stopping, 1e-6)).toMatchObject({ ok: false, fault: { reason: 'too-fine' } })
})

test('too few points, or all in one place, are faults', () => {
  expect(biarcsThrough([at(0, 0)], 1)).toMatchObject({ fault: { reason: 'few-points' } })
  expect(biarcsThrough([at(0, 0), at(1, 1)], 1, true)).toMatchObject({ fault: { reason: 'few-points' } })
  expect(biarcsThrough([at(0, 0), at(0, 0), at(1e-9, 0)], 1e-3)).toMatchObject({
    fault: { reason: 'few-points' },
  })
  expect(expectValue(biarcsThrough([at(0, 0), at(3, 4)], 1)).segments).toHaveLength(2)
})
