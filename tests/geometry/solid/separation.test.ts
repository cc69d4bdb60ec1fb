import fc from 'fast-check'
import { expect, test } from 'vitest'
import { hullOfPoints } from '../../../src/geometry/solid/body.ts'
import { along, dot, minus, times } from '../../../src/geometry/solid/point3.ts'
import { apart } from '../../../src/geometry/solid/separation.ts'
import { coincident, printable } from '../../../src/number/tolerance.ts'
import { anyCone, at, bodyOfCone, rod } from './rods.ts'

const exactly = { maxDeviation: coincident }
/** A thousandth of what is printable, as digits of toBeCloseTo: half of 1e-6 is the bound of every distance. */
const digits = 5

const cube = hullOfPoints([0, 1].flatMap(x => [0, 1].flatMap(y => [0, 1].map(z => at(x, y, z)))))

/**
 * Source: by definition; the distance of two lines is |(q − p) · (u × v)| / |u × v|, two bars whose common square lies
 * within both are nearer by their radii, and a point is as far from a line as the cross product says.
 */
test.each<[what: string, a: ReturnType<typeof rod>, b: ReturnType<typeof rod>, distance: number]>([
  [
    'two bars that cross square: distance of the axes less both radii',
    rod(at(-20, 0, 0), at(20, 0, 0), 3),
    rod(at(0, -20, 12), at(0, 20, 12), 4),
    12 - 3 - 4,
  ],
  [
    'two bars that cross aslant: the same',
    rod(at(-20, 0, 0), at(20, 0, 0), 3),
    rod(at(-20, -20, 12), at(20, 20, 12), 4),
    12 - 3 - 4,
  ],
  ['two parallel bars', rod(at(0, 0, 0), at(40, 0, 0), 3), rod(at(10, 9, 0), at(30, 9, 0), 4), 9 - 3 - 4],
  ['two bars end to end', rod(at(0, 0, 0), at(10, 0, 0), 3), rod(at(12, 0, 0), at(30, 0, 0), 4), 2],
  [
    'the point of a bit before a bar',
    rod(at(0, 0, 20), at(0, 0, 10), 3, 0),
    rod(at(-20, 0, 0), at(20, 0, 0), 4),
    10 - 4,
  ],
  [
    'the rim of a flat floor before a bar beside it',
    rod(at(0, 0, 20), at(0, 0, 10), 3),
    rod(at(-20, 7, 0), at(20, 7, 0), 4),
    Math.hypot(7 - 3, 10) - 4,
  ],
  ['two points of bits', rod(at(0, 0, 9), at(0, 0, 5), 2, 0), rod(at(3, 4, -21), at(3, 4, -7), 2, 0), 13],
  ['a bar and a plane face', rod(at(0.5, 0.5, 5), at(0.5, 0.5, 3), 0.4), cube, 2],
  ['a bar and the corner of a block', rod(at(4, 4, -5), at(4, 4, 5), 1), cube, 3 * Math.SQRT2 - 1],
])('%s', (_, a, b, distance) => {
  const found = apart(a, b, exactly)!
  expect(found.distance).toBeCloseTo(distance, digits)
  expect(found.distance - found.atLeast).toBeLessThanOrEqual(coincident)
  const way = minus(found.first, found.second)
  expect(Math.hypot(way.x, way.y, way.z)).toBeCloseTo(distance, digits)
})

test.each<[what: string, a: ReturnType<typeof rod>, b: ReturnType<typeof rod>]>([
  [
    'bars whose axes cross in their middles',
    rod(at(-9, 0, 0), at(9, 0, 0), 3),
    rod(at(0, -9, 0), at(0, 9, 0), 3),
  ],
  ['bars along one axis', rod(at(-9, 0, 0), at(9, 0, 0), 3), rod(at(0, 0, 0), at(20, 0, 0), 2)],
  ['a body and itself', cube, cube],
  ['a bar inside a bar', rod(at(-9, 0, 0), at(9, 0, 0), 3), rod(at(-5, 0.2, 0), at(5, 0.2, 0), 1)],
  ['faces that touch', rod(at(0, 0, 0), at(10, 0, 0), 3), rod(at(10, 0, 0), at(30, 0, 0), 4)],
])('%s meet', (_, a, b) => {
  expect(apart(a, b, exactly)!.distance).toBe(0)
})

test('any two cones: the bound holds, turned round it is the same, and beyond the reach there is no answer', () => {
  fc.assert(
    fc.property(anyCone, anyCone, (p, q) => {
      const [a, b] = [bodyOfCone(p), bodyOfCone(q)]
      const found = apart(a, b, exactly)!
      const back = apart(b, a, exactly)!
      expect(Math.abs(found.distance - back.distance)).toBeLessThanOrEqual(2 * coincident)
      // a plane square to the way found parts the two, as far as the way itself is known
      if (found.distance > 0) {
        const d = times(minus(found.second, found.first), 1 / found.distance)
        const gap = -dot(b.farthest(times(d, -1)), times(d, -1)) - dot(a.farthest(d), d)
        expect(gap).toBeGreaterThan(found.distance - printable)
        expect(apart(a, b, { ...exactly, reach: found.distance * 0.999 - coincident })).toBeUndefined()
        expect(apart(a, b, { ...exactly, reach: found.distance + coincident })).toBeDefined()
      }
    }),
    { numRuns: 3000 },
  )
})

test('what is found apart is met when it is moved by as much', () => {
  fc.assert(
    fc.property(anyCone, anyCone, (p, q) => {
      const found = apart(bodyOfCone(p), bodyOfCone(q), exactly)!
      const way = minus(found.second, found.first)
      const moved = { ...p, from: along(p.from, way, 1), to: along(p.to, way, 1) }
      // bodies that all but touch are told apart within a hundredth of what is printable
      expect(apart(bodyOfCone(moved), bodyOfCone(q), exactly)!.distance).toBeLessThan(printable / 100)
    }),
    { numRuns: 1000 },
  )
})
