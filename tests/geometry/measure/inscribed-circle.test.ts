import fc from 'fast-check'
import { expect, test } from 'vitest'
import { regionBounds } from '../../../src/geometry/measure/bounds.ts'
import { inscribedCircle } from '../../../src/geometry/measure/inscribed-circle.ts'
import { pointInRegion } from '../../../src/geometry/measure/inside.ts'
import { nearestOnRegion } from '../../../src/geometry/measure/nearest.ts'
import { circle } from '../../../src/geometry/shape/circle.ts'
import type { Region } from '../../../src/geometry/shape/contour.ts'
import { polygon } from '../../../src/geometry/shape/polygon.ts'
import { rectangle } from '../../../src/geometry/shape/rectangle.ts'
import { slot } from '../../../src/geometry/shape/slot.ts'
import { transformRegion } from '../../../src/geometry/shape/transform.ts'
import { anyRegion, anySimilarity } from '../any-region.ts'

const origin = { x: 0, y: 0 }
const maxDeviation = 1e-3
const plate = rectangle({ left: 0, bottom: 0, right: 100, top: 60 })
const ring: Region = { outer: circle(origin, 50), holes: [circle({ x: 4, y: 3 }, 30)] }

/** Radii by closed formula, mm. */
const known: readonly [string, Region, number][] = [
  [
    'a 3-4-5 triangle: area over half the perimeter',
    { outer: polygon([origin, { x: 30, y: 0 }, { x: 0, y: 40 }]), holes: [] },
    10,
  ],
  ['a rectangle: half its width', plate, 30],
  ['a leaning slot: half its width', slot(origin, { x: 300, y: 40 }, 10), 5],
  ['a circle: itself', { outer: circle({ x: 7, y: 8 }, 9), holes: [] }, 9],
  ['an eccentric ring: half of R − r + e', ring, (50 - 30 + 5) / 2],
  // from the corner (100, 60) to the hole about (50, 30): (r + 10)² = (50 − r)² + (30 − r)²
  [
    'a plate with a hole in the middle',
    { ...plate, holes: [circle({ x: 50, y: 30 }, 10)] },
    90 - Math.sqrt(90 ** 2 - (50 ** 2 + 30 ** 2 - 10 ** 2)),
  ],
]

test.each(known)('the largest circle in %s', (_, region, radius) => {
  const found = inscribedCircle(region, maxDeviation)!.radius
  expect(found).toBeLessThan(radius + 1e-9)
  expect(found).toBeGreaterThan(radius - maxDeviation)
})

test('where straight edges hold the circle it is exact', () => {
  const dent = polygon([origin, { x: 30, y: 0 }, { x: 30, y: 50 }, { x: 14, y: 25 }, { x: 0, y: 40 }])
  for (const [_, region, radius] of known.slice(0, 4)) {
    expect(inscribedCircle(region, maxDeviation)!.radius).toBeCloseTo(radius, 9)
  }
  const coarse = inscribedCircle({ outer: dent, holes: [] }, 0.01)!
  const fine = inscribedCircle({ outer: dent, holes: [] }, 1e-6)!
  expect(coarse.radius).toBeCloseTo(fine.radius, 9)
})

test('nothing fits where there is no area, and a deviation is more than nothing', () => {
  expect(inscribedCircle({ outer: { segments: [], closed: true }, holes: [] }, 1)).toBeUndefined()
  expect(() => inscribedCircle(plate, 0)).toThrow(RangeError)
})

test('the circle lies inside, touches, and no point of a grid has more room by more than the deviation', () => {
  fc.assert(
    fc.property(anyRegion, region => {
      const { centre, radius } = inscribedCircle(region, maxDeviation)!
      expect(pointInRegion(region, centre)).toBe('inside')
      expect(nearestOnRegion(region, centre)!.distance).toBe(radius)
      const { left, bottom, right, top } = regionBounds(region)
      for (let i = 1; i < 40; i++) {
        for (let j = 1; j < 40; j++) {
          const p = { x: left + ((right - left) * i) / 40, y: bottom + ((top - bottom) * j) / 40 }
          const room = nearestOnRegion(region, p)!.distance
          if (room > radius + maxDeviation) expect(pointInRegion(region, p)).not.toBe('inside')
        }
      }
    }),
    { numRuns: 40 },
  )
})

test('the radius follows a turn, mirror, shift and scale', () => {
  fc.assert(
    fc.property(anyRegion, anySimilarity, (region, { matrix, factor }) => {
      const before = inscribedCircle(region, maxDeviation)!
      const after = inscribedCircle(transformRegion(region, matrix), maxDeviation * factor)!
      expect(Math.abs(after.radius - before.radius * factor)).toBeLessThanOrEqual(maxDeviation * factor)
    }),
    { numRuns: 40 },
  )
})
