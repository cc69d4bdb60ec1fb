import fc from 'fast-check'
import { expect, test } from 'vitest'
import { brokenLaws } from './laws.ts'
import { randomCase } from './random-cases.ts'

test('1,000 random pairs obey the laws of booleans', () => {
  const seed = Date.now() % 1_000_000_000
  console.log(`random booleans, seed ${seed}`)
  fc.assert(
    fc.property(fc.nat(2_000_000_000), number => {
      const { first, second } = randomCase(number)
      expect(brokenLaws(first, second, number)).toEqual([])
    }),
    { numRuns: 1000, seed, endOnFailure: true },
  )
})
