import { expect, test } from 'vitest'
import { angleLessSine, regionArea, signedArea } from '../../../src/geometry/measure/area.ts'
import { contourLength } from '../../../src/geometry/measure/length.ts'
import { circle } from '../../../src/geometry/shape/circle.ts'
import type { Contour, Region } from '../../../src/geometry/shape/contour.ts'
import type { Outcome } from '../../../src/geometry/shape/outcome.ts'
import { polygon } from '../../../src/geometry/shape/polygon.ts'
import { rectangle, rectangleWithCorners } from '../../../src/geometry/shape/rectangle.ts'
import { reverseContour } from '../../../src/geometry/shape/reverse.ts'
import { arc, line } from '../../../src/geometry/shape/segment.ts'
import { slot } from '../../../src/geometry/shape/slot.ts'

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(outcome.fault.reason)
  return outcome.value
}

const plate = { left: 0, bottom: 0, right: 100, top: 60 }
const rounded = { radius: 10 }
const all = <T>(c: T) => ({ 'bottom-left': c, 'bottom-right': c, 'top-right': c, 'top-left': c })
const reach = Math.sqrt(100 - 25)
const lens: Contour = {
  segments: [
    arc({ x: 5, y: -reach }, { x: 5, y: reach }, { x: 0, y: 0 }, 1),
    arc({ x: 5, y: reach }, { x: 5, y: -reach }, { x: 10, y: 0 }, 1),
  ],
  closed: true,
}

/** Area in mm², perimeter in mm, and where the values come from. */
const known: readonly [string, Region, number, number, string][] = [
  [
    'slot 40 between centres, 20 wide',
    slot({ x: 0, y: 0 }, { x: 40, y: 0 }, 20),
    1114.1593,
    142.8319,
    "Green's theorem",
  ],
  [
    'rectangle 100×60, corners r 10',
    value(rectangleWithCorners(plate, all(rounded))),
    5914.1593,
    302.8319,
    "Green's theorem",
  ],
  [
    'rectangle 100×60, chamfers 10',
    value(rectangleWithCorners(plate, all({ chamfer: 10 }))),
    5800,
    240 + 40 * Math.SQRT2,
    'closed formula',
  ],
  [
    'lens of two circles r 10, 10 apart',
    { outer: lens, holes: [] },
    122.83697,
    (40 * Math.PI) / 3,
    "Green's theorem",
  ],
  [
    'square with a hole',
    { ...rectangle(plate), holes: [circle({ x: 50, y: 30 }, 10)] },
    6000 - 100 * Math.PI,
    320,
    'closed formula',
  ],
]

test.each(known)('the area and perimeter of a %s', (_, region, area, perimeter) => {
  expect(regionArea(region)).toBeCloseTo(area, 4)
  expect(contourLength(region.outer)).toBeCloseTo(perimeter, 4)
})

/** Circular segments of radius 1: angle in degrees, area, height. Source: follows from the definition. */
test.each([
  [30, 0.0118, 0.03407],
  [60, 0.09059, 0.13397],
  [90, 0.2854, 0.29289],
  [120, 0.61418, 0.5],
])('the area of a circular segment of %d° and radius 1', (degrees, area) => {
  const angle = (degrees * Math.PI) / 180
  const end = { x: Math.cos(angle), y: Math.sin(angle) }
  const start = { x: 1, y: 0 }
  const segment: Contour = { segments: [arc(start, end, { x: 0, y: 0 }, 1), line(end, start)], closed: true }
  expect(signedArea(segment)).toBeCloseTo(area, 5)
  expect(signedArea(reverseContour(segment))).toBeCloseTo(-area, 5)
})

test('the area of a flat circular segment keeps its digits', () => {
  // chord 1, radius a million: the segment's area is close to c³/12r
  expect(angleLessSine(1e-6) * 6e18).toBeCloseTo(1, 12)
  // both ways of calculating agree where one takes over from the other
  expect(angleLessSine(0.9999999)).toBeCloseTo(0.9999999 - Math.sin(0.9999999), 15)
})

test('an area ten metres from the origin is the area at the origin', () => {
  const corners = [
    { x: 10_000, y: 10_000 },
    { x: 10_003, y: 10_000 },
    { x: 10_003, y: 10_001 },
    { x: 10_000, y: 10_001 },
  ]
  expect(signedArea(polygon(corners))).toBe(3)
})
