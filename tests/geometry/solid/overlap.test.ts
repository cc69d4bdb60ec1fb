import fc from 'fast-check'
import { expect, test } from 'vitest'
import { movedAlong } from '../../../src/geometry/solid/body.ts'
import { overlapOf } from '../../../src/geometry/solid/overlap.ts'
import { minus, unit3 } from '../../../src/geometry/solid/point3.ts'
import { apart } from '../../../src/geometry/solid/separation.ts'
import { coincident } from '../../../src/number/tolerance.ts'
import { anyCone, at, bodyOfCone, rod } from './rods.ts'

const exactly = { maxDeviation: coincident }

test('bars that cross reach into each other by both radii less the distance of their axes', () => {
  const a = rod(at(-20, 0, 0), at(20, 0, 0), 3)
  const b = rod(at(-20, -20, 5), at(20, 20, 5), 4)
  const axes = [at(1, 0, 0), at(Math.SQRT1_2, Math.SQRT1_2, 0)] as const
  expect(overlapOf([[a, b]], axes).by).toBeCloseTo(3 + 4 - 5, 9)
})

/** Source: by definition; the tip of the cone is √(x² + z²) from the axis of the bar, and its flank is steeper than the way there. */
test('a point beside the middle of a bar reaches into it square to the bar, not along its own axis', () => {
  for (const aside of [0, 1, 2, 3]) {
    const high = Math.sqrt(4 ** 2 - aside ** 2) - 0.1
    const tip = rod(at(0, aside, high + 3), at(0, aside, high), 1, 0)
    const bar = rod(at(-20, 0, 0), at(20, 0, 0), 4)
    const found = overlapOf([[tip, bar]], [at(0, 0, -1), at(1, 0, 0)])
    expect(found.by).toBeCloseTo(4 - Math.hypot(aside, high), 5)
  }
})

test('moved by the overlap along its way, a cone is clear of another', () => {
  fc.assert(
    fc.property(anyCone, anyCone, (p, q) => {
      const [a, b] = [bodyOfCone(p), bodyOfCone(q)]
      fc.pre(apart(a, b, exactly)!.distance === 0)
      const axes = [unit3(minus(p.to, p.from))!, unit3(minus(q.to, q.from))!] as const
      const { by, way } = overlapOf([[a, b]], axes)
      expect(apart(a, movedAlong(b, way, by + 10 * coincident), exactly)!.distance).toBeGreaterThan(0)
    }),
    { numRuns: 500 },
  )
})

test('bodies whose axes all but coincide have an overlap', () => {
  const a = rod(at(0, 0, 0), at(0, 0, 0.5), 0.2)
  const b = rod(at(0, 0, 0), at(0, Number.MIN_VALUE, -0.5), 0.2)
  const axes = [at(0, 0, 1), at(0, -Number.MIN_VALUE, -1)] as const
  expect(overlapOf([[a, b]], axes).by).toBe(0)
})
