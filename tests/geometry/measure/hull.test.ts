import fc from 'fast-check'
import { expect, test } from 'vitest'
import { pointAt, tangentAt } from '../../../src/geometry/measure/along.ts'
import { signedArea } from '../../../src/geometry/measure/area.ts'
import { convexHull, convexHullOfPoints } from '../../../src/geometry/measure/hull.ts'
import { pointInContour } from '../../../src/geometry/measure/inside.ts'
import { contourLength, segmentLength } from '../../../src/geometry/measure/length.ts'
import { circle } from '../../../src/geometry/shape/circle.ts'
import type { Contour } from '../../../src/geometry/shape/contour.ts'
import { shift } from '../../../src/geometry/shape/matrix.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { polyline } from '../../../src/geometry/shape/polygon.ts'
import { rectangle } from '../../../src/geometry/shape/rectangle.ts'
import { slot } from '../../../src/geometry/shape/slot.ts'
import { transformContour } from '../../../src/geometry/shape/transform.ts'
import { anyRegion, anySimilarity } from '../any-region.ts'
import { expectValue } from '../expect-value.ts'

const at = (x: number, y: number): Point => ({ x, y })

test('a string around two equal discs makes a slot, around unequal ones a belt', () => {
  const equal = expectValue(convexHull([circle(at(0, 0), 10), circle(at(40, 0), 10)]))
  expect(signedArea(equal)).toBeCloseTo(800 + 100 * Math.PI, 9) // slot 40 × 20, Green's theorem
  expect(contourLength(equal)).toBeCloseTo(80 + 20 * Math.PI, 9)
  // open belt over pulleys r and R, c apart: 2√(c² − (R−r)²) + π(R + r) + 2(R − r)·asin((R − r)/c)
  const belt = expectValue(convexHull([circle(at(0, 0), 10), circle(at(40, 30), 20)]))
  const length = 2 * Math.sqrt(50 ** 2 - 10 ** 2) + Math.PI * 30 + 20 * Math.asin(10 / 50)
  expect(contourLength(belt)).toBeCloseTo(length, 9)
})

test('the hull of a convex shape is the shape, its tags kept', () => {
  const plate = rectangle({ left: 0, bottom: 0, right: 9, top: 5 }).outer
  const hull = expectValue(convexHull([plate]))
  expect(hull.segments.map(s => s.tag).sort()).toEqual(['bottom', 'left', 'right', 'top'])
  const leaning = slot(at(0, 0), at(30, 40), 12, 'slot').outer
  const same = expectValue(convexHull([leaning]))
  expect(same.segments).toHaveLength(4)
  expect(same.segments.every(s => s.tag === 'slot')).toBe(true)
  expect(signedArea(same)).toBeCloseTo(signedArea(leaning), 9)
})

test('points in one line have no hull, and three in a line are two corners', () => {
  expect(convexHullOfPoints([at(0, 0), at(1, 1), at(2, 2)])).toMatchObject({
    ok: false,
    fault: { reason: 'no-area' },
  })
  expect(convexHull([polyline([at(0, 0), at(5, 0)])])).toMatchObject({
    ok: false,
    fault: { reason: 'no-area' },
  })
  const square = [at(0, 0), at(2, 0), at(2, 2), at(0, 2), at(1, 0), at(2, 1), at(1, 1), at(0, 0)]
  expect(expectValue(convexHullOfPoints(square)).segments.map(s => s.from)).toEqual(square.slice(0, 4))
})

const samples = (contour: Contour, each: number) =>
  contour.segments.flatMap(s => Array.from({ length: each }, (_, i) => pointAt(s, i / each)))

test('a hull turns left all the way, holds every point, and is no larger than the hull of dense samples allows', () => {
  const coordinate = fc.double({ min: -120, max: 120, noNaN: true })
  fc.assert(
    fc.property(anyRegion, anyRegion, coordinate, coordinate, (a, b, x, y) => {
      const shapes = [a.outer, transformContour(b.outer, shift(x, y))]
      const hull = expectValue(convexHull(shapes))
      const { segments } = hull
      segments.forEach((s, i) => {
        const next = segments[(i + 1) % segments.length]!
        expect(s.to).toBe(next.from)
        const u = tangentAt(s, 1)
        const v = tangentAt(next, 0)
        // where two edges touch smoothly rounding may turn them by the size of a coincidence
        const slack = 1e-6 / Math.min(segmentLength(s), segmentLength(next)) + 1e-9
        expect(u.x * v.y - u.y * v.x).toBeGreaterThan(-slack)
        if (s.kind === 'arc') expect(s.turn).toBe(1)
      })
      const dense = shapes.flatMap(c => samples(c, 100))
      for (const p of dense) expect(pointInContour(hull, p)).not.toBe('outside')
      const polygonal = signedArea(expectValue(convexHullOfPoints(dense)))
      const area = signedArea(hull)
      expect(area).toBeGreaterThan(polygonal - 1e-6)
      // a chord between samples cuts off at most its length times its height c²/8r ≤ c/2·(sweep/8)
      expect(area).toBeLessThan(polygonal * 1.002)
    }),
    { numRuns: 60 },
  )
})

test('the hull of a hull is the hull, and it follows a turn, mirror, shift and scale', () => {
  fc.assert(
    fc.property(anyRegion, anySimilarity, (region, { matrix, factor }) => {
      const hull = expectValue(convexHull([region.outer]))
      const again = expectValue(convexHull([hull]))
      expect(signedArea(again)).toBeCloseTo(signedArea(hull), 5)
      const moved = expectValue(convexHull([transformContour(region.outer, matrix)]))
      expect(signedArea(moved) / signedArea(hull) / factor ** 2).toBeCloseTo(1, 7)
    }),
  )
})

test('a polygon of many arcs and points keeps its hull exact', () => {
  const many = Array.from({ length: 2000 }, (_, i) =>
    circle(at((i * 7919) % 1009, (i * 104729) % 997), (i % 17) + 1),
  )
  const hull = expectValue(convexHull(many))
  for (const disc of many)
    for (const p of samples(disc, 8)) expect(pointInContour(hull, p)).not.toBe('outside')
  expect(hull.segments.length).toBeLessThan(100)
})
