import fc from 'fast-check'
import { expect, test } from 'vitest'
import { pointAt } from '../../../src/geometry/measure/along.ts'
import { enclosingCircle, enclosingCircleOfPoints } from '../../../src/geometry/measure/enclosing-circle.ts'
import { enclosingRectangle } from '../../../src/geometry/measure/enclosing-rectangle.ts'
import { circle } from '../../../src/geometry/shape/circle.ts'
import type { Contour } from '../../../src/geometry/shape/contour.ts'
import { shift, turn } from '../../../src/geometry/shape/matrix.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { polygon } from '../../../src/geometry/shape/polygon.ts'
import { rectangle } from '../../../src/geometry/shape/rectangle.ts'
import { arc, line } from '../../../src/geometry/shape/segment.ts'
import { slot } from '../../../src/geometry/shape/slot.ts'
import { transformContour } from '../../../src/geometry/shape/transform.ts'
import { anyRegion, anySimilarity } from '../any-region.ts'
import { expectValue } from '../expect-value.ts'

const at = (x: number, y: number): Point => ({ x, y })
const plate = rectangle({ left: 0, bottom: 0, right: 80, top: 60 }).outer

/** Radii by closed formula, mm. */
const circles: readonly [string, readonly Contour[], number][] = [
  ['a rectangle: half its diagonal', [plate], 50],
  ['a slot: half its length', [slot(at(0, 0), at(30, 40), 20).outer], 35],
  ['a circle: itself', [circle(at(5, 6), 7)], 7],
  ['two circles: half of d + r₁ + r₂', [circle(at(0, 0), 10), circle(at(30, 40), 20)], 40],
  ['a right triangle: half its hypotenuse', [polygon([at(0, 0), at(30, 0), at(0, 40)])], 25],
  [
    'an equilateral triangle: side / √3',
    [polygon([at(0, 0), at(30, 0), at(15, 15 * Math.sqrt(3))])],
    30 / Math.sqrt(3),
  ],
  [
    'a quarter disc: half its chord',
    [
      {
        segments: [
          arc(at(20, 0), at(0, 20), at(0, 0), 1),
          line(at(0, 20), at(0, 0)),
          line(at(0, 0), at(20, 0)),
        ],
        closed: true,
      },
    ],
    10 * Math.SQRT2,
  ],
]

test.each(circles)('the smallest circle around %s', (_, contours, radius) => {
  expect(expectValue(enclosingCircle(contours)).radius).toBeCloseTo(radius, 10)
})

test('a circle goes round one point and round a hundred thousand on one circle, but not round nothing', () => {
  expect(expectValue(enclosingCircleOfPoints([at(3, 4)]))).toEqual({ centre: at(3, 4), radius: 0 })
  const ring = Array.from({ length: 100_000 }, (_, i) => at(1000 + 10 * Math.cos(i), 10 * Math.sin(i)))
  expect(expectValue(enclosingCircleOfPoints(ring)).radius).toBeCloseTo(10, 9)
  expect(enclosingCircleOfPoints([])).toMatchObject({ ok: false, fault: { reason: 'empty' } })
})

test('edges that lean by less than any rounding do not mislead the circle or the rectangle', () => {
  // found by the random tests: the sides of 1e-162 squared are nothing, and directions round past each other
  const octagon = polygon(
    Array.from({ length: 8 }, (_, i) =>
      at(40 * Math.cos((i * Math.PI) / 4), i === 0 ? -1.6e-162 : 40 * Math.sin((i * Math.PI) / 4)),
    ),
  )
  const small = polygon([at(0.01, 0), at(1, 0), at(1, 1)])
  expect(expectValue(enclosingCircle([small, octagon])).radius).toBeCloseTo(40, 9)
  for (const lean of [1e-16, -1e-16, 1e-17, 5e-324]) {
    const nearly = polygon([
      at(0, 0),
      at(37, lean),
      at(74, 0),
      at(74 + lean, 50),
      at(74, 100),
      at(37, 100 - lean),
      at(0, 100),
    ])
    const { width, height } = enclosingRectangle([nearly])!
    expect(Math.min(width, height)).toBeCloseTo(74, 9)
    expect(Math.max(width, height)).toBeCloseTo(100, 9)
  }
})

const samples = (contour: Contour, each: number) =>
  contour.segments.flatMap(s => Array.from({ length: each }, (_, i) => pointAt(s, i / each)))

const offset = fc.double({ min: -150, max: 150, noNaN: true })
const twoShapes = fc
  .tuple(anyRegion, anyRegion, offset, offset)
  .map(([a, b, x, y]) => [a.outer, transformContour(b.outer, shift(x, y))])

test('the smallest circle holds everything, and no circle about a point beside its centre is smaller', () => {
  fc.assert(
    fc.property(twoShapes, shapes => {
      const { centre, radius } = expectValue(enclosingCircle(shapes))
      const dense = shapes.flatMap(c => samples(c, 400))
      const reach = (c: Point) =>
        dense.reduce((most, p) => Math.max(most, Math.hypot(p.x - c.x, p.y - c.y)), 0)
      expect(reach(centre)).toBeLessThan(radius + 1e-9)
      // the radius as a function of the centre is convex: lowest here if not lower in eight places around.
      // Samples of an arc, at most half a degree of 60 mm apart, fall short of its farthest point by 1e-3
      for (let k = 0; k < 8; k++) {
        const angle = (k * Math.PI) / 4
        expect(reach(at(centre.x + 0.5 * Math.cos(angle), centre.y + 0.5 * Math.sin(angle)))).toBeGreaterThan(
          radius - 1e-3,
        )
      }
    }),
    { numRuns: 40 },
  )
})

test('the smallest circle and rectangle follow a turn, mirror, shift and scale', () => {
  fc.assert(
    fc.property(twoShapes, anySimilarity, (shapes, { matrix, factor }) => {
      const moved = shapes.map(c => transformContour(c, matrix))
      // a circle may be larger than the smallest by a coincidence
      const round = expectValue(enclosingCircle(shapes)).radius
      const slack = 2e-6 * Math.max(1, factor)
      expect(Math.abs(expectValue(enclosingCircle(moved)).radius - round * factor)).toBeLessThan(slack)
      const before = enclosingRectangle(shapes)!
      const after = enclosingRectangle(moved)!
      const difference = after.width * after.height - before.width * before.height * factor ** 2
      expect(Math.abs(difference)).toBeLessThan(slack * (after.width + after.height))
    }),
  )
})

/** Sides by construction, mm. */
const rectangles: readonly [string, readonly Contour[], number, number][] = [
  ['a turned rectangle', [transformContour(plate, turn(0.3))], 80, 60],
  ['a leaning slot', [slot(at(0, 0), at(30, 40), 20).outer], 70, 20],
  ['a circle', [circle(at(5, 6), 7)], 14, 14],
  // at 45° to its axis both sides are 2r − d·cos 45°, and the area is less than along the axis
  ['a lens of two circles r 10, 10 apart', [lens()], 20 - 10 * Math.SQRT1_2, 20 - 10 * Math.SQRT1_2],
]

function lens(): Contour {
  const [low, high] = [at(5, -Math.sqrt(75)), at(5, Math.sqrt(75))]
  const segments = [arc(low, high, at(0, 0), 1), arc(high, low, at(10, 0), 1)]
  return transformContour({ segments, closed: true }, turn(0.7))
}

test.each(rectangles)('the smallest rectangle around %s', (_, contours, long, short) => {
  const { width, height, corners } = enclosingRectangle(contours)!
  expect(Math.max(width, height)).toBeCloseTo(long, 9)
  expect(Math.min(width, height)).toBeCloseTo(short, 9)
  expect(Math.hypot(corners[1].x - corners[0].x, corners[1].y - corners[0].y)).toBeCloseTo(width, 9)
  expect(enclosingRectangle([])).toBeUndefined()
})

test('the smallest rectangle holds everything, and none at any of 200 angles is smaller', () => {
  fc.assert(
    fc.property(twoShapes, shapes => {
      const found = enclosingRectangle(shapes)!
      const dense = shapes.flatMap(c => samples(c, 200))
      const spread = (angle: number) => {
        const along = dense.map(p => p.x * Math.cos(angle) + p.y * Math.sin(angle))
        return [Math.min(...along), Math.max(...along)] as const
      }
      const [left, right] = spread(found.angle)
      expect(right - left).toBeLessThan(found.width + 1e-9)
      const { centre } = found
      const middle = centre.x * Math.cos(found.angle) + centre.y * Math.sin(found.angle)
      expect(right).toBeLessThan(middle + found.width / 2 + 1e-9)
      expect(left).toBeGreaterThan(middle - found.width / 2 - 1e-9)
      // samples of an arc, at most 2π·60/200 mm apart, fall short of its farthest point by less than 0.01
      for (let k = 0; k < 200; k++) {
        const angle = (k * Math.PI) / 400
        const [a, b] = spread(angle)
        const [c, d] = spread(angle + Math.PI / 2)
        expect((b - a + 0.02) * (d - c + 0.02)).toBeGreaterThan(found.width * found.height)
      }
    }),
    { numRuns: 10 },
  )
})
