import fc from 'fast-check'
import { expect, it, test } from 'vitest'
import { offsetRegion } from '../../../src/geometry/offset/offset.ts'
import type { Region } from '../../../src/geometry/shape/contour.ts'
import { anyRegion } from '../any-region.ts'
import { comb } from '../generate/comb.ts'
import { gear } from '../generate/gear.ts'
import { randomFrom } from '../generate/random.ts'
import { spiralPath } from '../generate/random-path.ts'
import { randomStar } from '../generate/star.ts'
import { foundCases } from './found-cases.ts'
import { offsetCase, troubleWith } from './fuzz-offset.ts'
import type { Asked } from './offset-laws.ts'

test('every offset keeps the laws of its joins and ends: 1,000 cases', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 2 ** 31 - 1 }), seed => {
      const asked = offsetCase(seed)
      fc.pre(asked !== undefined)
      expect(troubleWith(asked!, seed)).toBeUndefined()
    }),
    { numRuns: 1_000 },
  )
})

test('shapes of every kind keep them too', () => {
  fc.assert(
    fc.property(anyRegion, fc.double({ min: -20, max: 20, noNaN: true }), fc.nat(), (region, delta, seed) => {
      fc.pre(Math.abs(delta) > 0.01)
      const asked: Asked = { kind: 'regions', regions: [region], delta, options: {} }
      expect(troubleWith(asked, seed)).toBeUndefined()
    }),
    { numRuns: 300 },
  )
})

const benchmarked: readonly [string, Region][] = [
  ['gear', gear(50)],
  ['comb', comb(50)],
  ['random star', randomStar(200, randomFrom(1))],
]

it.each(benchmarked)('the benchmark’s %s keeps them, grown and shrunk by 1 mm', (_, region) => {
  for (const delta of [1, -1, 1.9, -1.9]) {
    const asked: Asked = { kind: 'regions', regions: [region], delta, options: {} }
    expect(troubleWith(asked, 1)).toBeUndefined()
  }
})

it('a spiral keeps them with gaps open, just closed and closed', () => {
  for (const delta of [0.4, 0.5, 0.6]) {
    const asked: Asked = { kind: 'path', path: spiralPath(9, 1), delta, options: {} }
    expect(troubleWith(asked, 1)).toBeUndefined()
  }
})

it.each(foundCases)('%s', (_, asked) => {
  for (let seed = 1; seed <= 10; seed++) expect(troubleWith(asked, seed)).toBeUndefined()
})

it('a distance far greater than the region leaves nothing', () => {
  expect(offsetRegion(gear(20), -1e6)).toEqual({ ok: true, value: [] })
})

test('an edge shorter than the kernel tells points apart gets no mitre of its own', () => {
  // two copies of a part nearly touch, one with an edge of 1e-10 mm that runs back
  const seed = 401_995_996
  const asked = offsetCase(seed)
  expect(asked).toBeDefined()
  expect(troubleWith(asked!, seed)).toBeUndefined()
})
