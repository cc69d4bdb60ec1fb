import fc from 'fast-check'
import { expect, test } from 'vitest'
import { leftOf, pointAt, tangentAt } from '../../../src/geometry/measure/along.ts'
import {
  boundsOfRegions,
  contourBounds,
  noBounds,
  regionBounds,
} from '../../../src/geometry/measure/bounds.ts'
import { nearestOnContour, nearestOnRegion, nearestOnSegment } from '../../../src/geometry/measure/nearest.ts'
import { circle } from '../../../src/geometry/shape/circle.ts'
import { apply } from '../../../src/geometry/shape/matrix.ts'
import { rectangle } from '../../../src/geometry/shape/rectangle.ts'
import { arc, line, type Segment } from '../../../src/geometry/shape/segment.ts'
import { slot } from '../../../src/geometry/shape/slot.ts'
import { transformRegion } from '../../../src/geometry/shape/transform.ts'
import { anyRegion, anySimilarity } from '../any-region.ts'

const plate = {
  ...rectangle({ left: 0, bottom: 0, right: 100, top: 60 }),
  holes: [circle({ x: 50, y: 30 }, 10)],
}

test('the nearest point says on which contour and which edge it lies', () => {
  expect(nearestOnRegion(plate, { x: 70, y: 30 })).toMatchObject({
    contour: 1,
    point: { x: 60, y: 30 },
    distance: 10,
  })
  expect(nearestOnRegion(plate, { x: 99, y: 30 })).toEqual({
    contour: 0,
    segment: 1,
    point: { x: 100, y: 30 },
    distance: 1,
  })
  expect(nearestOnContour(plate.outer, { x: -3, y: -4 })).toEqual({
    segment: 0,
    point: { x: 0, y: 0 },
    distance: 5,
  })
})

test('from the centre of an arc, or the smallest double beside it, every point of the arc is nearest', () => {
  const round = circle({ x: 5e-324, y: 0 }, 5)
  for (const p of [
    { x: 0, y: 0 },
    { x: 5e-324, y: 0 },
    { x: 0, y: 5e-324 },
  ]) {
    expect(nearestOnContour(round, p)).toMatchObject({ distance: 5, point: { x: 5, y: 0 } })
  }
})

test('nothing is nearest to nothing', () => {
  expect(nearestOnContour({ segments: [], closed: true }, { x: 0, y: 0 })).toBeUndefined()
  expect(contourBounds({ segments: [], closed: true })).toEqual(noBounds)
})

test('the nearest point of an edge is never farther than any of its points', () => {
  const coordinate = fc.double({ min: -50, max: 50, noNaN: true })
  const spot = fc.record({ x: coordinate, y: coordinate })
  const edge: fc.Arbitrary<Segment> = fc.oneof(
    fc.tuple(spot, spot).map(([a, b]) => line(a, b)),
    fc
      .tuple(
        spot,
        fc.double({ min: 1, max: 40, noNaN: true }),
        coordinate,
        coordinate,
        fc.constantFrom(1, -1),
      )
      .map(([centre, r, a, b, turn]) => {
        const on = (t: number) => ({ x: centre.x + r * Math.cos(t), y: centre.y + r * Math.sin(t) })
        return arc(on(a), on(b), centre, turn as 1 | -1)
      }),
  )
  fc.assert(
    fc.property(edge, spot, (s, p) => {
      fc.pre(s.from.x !== s.to.x || s.from.y !== s.to.y)
      const near = nearestOnSegment(s, p)
      expect(Math.hypot(near.point.x - p.x, near.point.y - p.y)).toBeCloseTo(near.distance, 9)
      let least = Infinity
      for (let i = 0; i <= 200; i++) {
        const q = pointAt(s, i / 200)
        const away = Math.hypot(q.x - p.x, q.y - p.y)
        expect(near.distance).toBeLessThanOrEqual(away + 1e-9)
        least = Math.min(least, away)
      }
      // two samples are at most 2π·40/200 apart, and the nearest point lies between two of them
      expect(near.distance).toBeGreaterThanOrEqual(least - (2 * Math.PI * 40) / 200)
    }),
  )
})

test('nearest distance and bounds follow a turn, mirror, shift and scale', () => {
  const coordinate = fc.double({ min: -80, max: 80, noNaN: true })
  fc.assert(
    fc.property(anyRegion, anySimilarity, coordinate, coordinate, (region, { matrix, factor }, x, y) => {
      const moved = transformRegion(region, matrix)
      const before = nearestOnRegion(region, { x, y })!
      const after = nearestOnRegion(moved, apply(matrix, { x, y }))!
      expect(Math.abs(after.distance - before.distance * factor)).toBeLessThan(1e-8)
      const box = regionBounds(moved)
      const reach = nearestOnRegion(moved, { x: box.right + 1, y: (box.bottom + box.top) / 2 })!
      expect(reach.distance).toBeGreaterThanOrEqual(1 - 1e-9)
    }),
  )
})

test('bounds reach to the outermost points of arcs and go round several regions', () => {
  expect(regionBounds(slot({ x: 0, y: 0 }, { x: 40, y: 0 }, 20))).toEqual({
    left: -10,
    bottom: -10,
    right: 50,
    top: 10,
  })
  expect(boundsOfRegions([plate, slot({ x: 200, y: 0 }, { x: 200, y: 90 }, 8)])).toEqual({
    left: 0,
    bottom: -4,
    right: 204,
    top: 94,
  })
})

test('along an edge: its ends exactly, the tangent the way it runs, the left side of a counter-clockwise arc inward', () => {
  const quarter = arc({ x: 10, y: 0 }, { x: 0, y: 10 }, { x: 0, y: 0 }, 1)
  expect(pointAt(quarter, 0)).toBe(quarter.from)
  expect(pointAt(quarter, 1)).toBe(quarter.to)
  const middle = pointAt(quarter, 0.5)
  expect(middle.x).toBeCloseTo(10 * Math.SQRT1_2, 12)
  expect(tangentAt(quarter, 0)).toEqual({ x: -0, y: 1 })
  const inward = leftOf(tangentAt(quarter, 0.5))
  expect(inward.x * middle.x + inward.y * middle.y).toBeCloseTo(-10, 12)
  const back = arc(quarter.to, quarter.from, quarter.centre, -1)
  expect(tangentAt(back, 1).y).toBeCloseTo(-1, 12)
})
