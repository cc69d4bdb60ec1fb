import fc from 'fast-check'
import { expect, it, test } from 'vitest'
import { regionArea } from '../../../src/geometry/measure/area.ts'
import { contourLength } from '../../../src/geometry/measure/length.ts'
import { offsetRegion } from '../../../src/geometry/offset/offset.ts'
import type { JoinOptions } from '../../../src/geometry/offset/options.ts'
import { circle } from '../../../src/geometry/shape/circle.ts'
import type { Region } from '../../../src/geometry/shape/contour.ts'
import {
  type Matrix,
  mirrorAcross,
  quarterTurns,
  scale,
  shift,
  turn,
} from '../../../src/geometry/shape/matrix.ts'
import { polygon } from '../../../src/geometry/shape/polygon.ts'
import { rectangle } from '../../../src/geometry/shape/rectangle.ts'
import { reverseContour } from '../../../src/geometry/shape/reverse.ts'
import { slot } from '../../../src/geometry/shape/slot.ts'
import { transformRegion } from '../../../src/geometry/shape/transform.ts'
import { anyRegion, anySimilarity } from '../any-region.ts'
import { expectValue } from '../expect-value.ts'
import { gear } from '../generate/gear.ts'
import { contoursOf, distanceTo, middleOf, promised } from './offset-laws.ts'

const fixtures: readonly [string, Region][] = [
  ['a plank', rectangle({ left: 0, bottom: 0, right: 100, top: 60 })],
  ['a slot', slot({ x: 3, y: 4 }, { x: 30, y: 20 }, 9)],
  [
    'a plate with holes',
    {
      ...rectangle({ left: 0, bottom: 0, right: 40, top: 20 }),
      holes: [circle({ x: 9, y: 10 }, 4), circle({ x: 25, y: 9 }, 5)],
    },
  ],
  ['a gear', gear(7)],
  [
    'a triangle',
    {
      outer: polygon([
        { x: 0, y: 0 },
        { x: 1, y: 5 },
        { x: 6, y: 1 },
      ]),
      holes: [],
    },
  ],
]

const moves: readonly [string, Matrix, number][] = [
  ['turned by a quarter', quarterTurns(1), 1],
  ['turned by 1 rad', turn(1), 1],
  ['mirrored', mirrorAcross(3), 1],
  ['shifted by 10 m', shift(10_000, -10_000), 1],
  ['made 7 times as large', scale(7), 7],
  ['made 25.4 times smaller', scale(1 / 25.4), 1 / 25.4],
]

/** Two results are the same shape: as many contours, and every end and middle of one on the boundary of the other. */
function expectSame(a: readonly Region[], b: readonly Region[], within: number): void {
  expect(a.map(r => r.holes.length).sort()).toEqual(b.map(r => r.holes.length).sort())
  const boundaries = [contoursOf(a), contoursOf(b)] as const
  for (const [from, to] of [boundaries, [boundaries[1], boundaries[0]] as const]) {
    for (const s of from.flatMap(c => c.segments)) {
      expect(distanceTo(to, s.from)).toBeLessThan(within)
      expect(distanceTo(to, middleOf(s))).toBeLessThan(within)
    }
  }
}

for (const [what, region] of fixtures) {
  it.each(moves)(`the offset of ${what} %s is its offset moved with it`, (_, matrix, factor) => {
    for (const delta of [1, -1, 2.5, -2.5]) {
      for (const join of ['round', 'mitre', 'bevel'] as const) {
        const plain = expectValue(offsetRegion(region, delta, { join }))
        const moved = expectValue(offsetRegion(transformRegion(region, matrix), delta * factor, { join }))
        expectSame(
          moved,
          plain.map(r => transformRegion(r, matrix)),
          1e-6,
        )
      }
    }
  })

  it(`${what} run the other way gives the same`, () => {
    const back = { outer: reverseContour(region.outer), holes: region.holes.map(reverseContour) }
    for (const delta of [1, -1]) {
      expectSame(expectValue(offsetRegion(back, delta)), expectValue(offsetRegion(region, delta)), 1e-9)
    }
  })
}

test('any shape under any similarity gives the offset moved with it', () => {
  const joins = fc.constantFrom<JoinOptions['join']>('round', 'mitre', 'bevel')
  fc.assert(
    fc.property(
      anyRegion,
      anySimilarity,
      fc.double({ min: -8, max: 8, noNaN: true }),
      joins,
      (region, { matrix, factor }, delta, join) => {
        fc.pre(Math.abs(delta) > 0.01)
        const options = { join: join ?? 'round' }
        const plain = expectValue(offsetRegion(region, delta, options))
        const moved = expectValue(offsetRegion(transformRegion(region, matrix), delta * factor, options))
        const area = plain.reduce((sum, r) => sum + regionArea(r), 0) * factor * factor
        const length = contoursOf(plain).reduce((sum, c) => sum + contourLength(c), 0) * factor
        const other = moved.reduce((sum, r) => sum + regionArea(r), 0)
        expect(Math.abs(other - area)).toBeLessThan(promised * length + 1e-6)
      },
    ),
    { numRuns: 300 },
  )
})

const convex: readonly [string, Region][] = [
  ['a plank', fixtures[0]![1]],
  ['a slot', fixtures[1]![1]],
  ['a disc', { outer: circle({ x: 5, y: 6 }, 7), holes: [] }],
  ['a triangle', fixtures[4]![1]],
]

it.each(convex)('%s grown and shrunk by the same is itself', (_, region) => {
  for (const delta of [0.01, 1, 10, 300]) {
    const grown = expectValue(offsetRegion(region, delta))
    const back = grown.flatMap(r => expectValue(offsetRegion(r, -delta)))
    expectSame(back, [region], 3e-6)
  }
})

test('grown by one distance and then another is grown by both', () => {
  fc.assert(
    fc.property(
      anyRegion,
      fc.double({ min: 0.05, max: 6, noNaN: true }),
      fc.double({ min: 0.05, max: 6, noNaN: true }),
      (region, a, b) => {
        const steps = expectValue(offsetRegion(region, a)).flatMap(r => expectValue(offsetRegion(r, b)))
        const once = expectValue(offsetRegion(region, a + b))
        const area = (regions: readonly Region[]) => regions.reduce((sum, r) => sum + regionArea(r), 0)
        expect(area(steps)).toBeCloseTo(area(once), 3)
      },
    ),
    { numRuns: 200 },
  )
})
