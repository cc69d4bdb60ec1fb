import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { mutate, randomFrom } from '../plan/mutate.ts'
import { randomPlan } from '../sheet/random-plan.ts'
import { keptAsPdf, keptAsSvg } from './promise.ts'

const plans = [
  '../plan/fixtures/plans/cliff-car.yaml',
  '../plan/fixtures/plans/pier-bracket.yaml',
  '../../examples/cliff-railway/cliff-railway.yaml',
].map(path => readFileSync(new URL(path, import.meta.url), 'utf8'))

const papers = fc.constantFrom(undefined, 'letter', 'a5', '100x100mm', '2000x2000mm')

test('random edits of a plan give SVG pages, or findings that say why not, and nothing else', () => {
  fc.assert(
    fc.property(fc.nat(), fc.constantFrom(...plans), papers, (seed, plan, paper) => {
      keptAsSvg(mutate(plan, randomFrom(seed)), paper)
    }),
    { numRuns: 100 },
  )
})

test('random edits of a plan give a PDF, or findings that say why not, and nothing else', async () => {
  await fc.assert(
    fc.asyncProperty(fc.nat(), fc.constantFrom(...plans), papers, async (seed, plan, paper) => {
      await keptAsPdf(mutate(plan, randomFrom(seed)), paper)
    }),
    { numRuns: 40 },
  )
})

test('any part, past its edges and cut to pieces too, is printed', async () => {
  await fc.assert(
    fc.asyncProperty(randomPlan, async plan => {
      const { pages } = keptAsSvg(plan, '1000x1000mm')
      expect(pages).toBeGreaterThan(0)
      expect((await keptAsPdf(plan, '1000x1000mm')).pages).toBe(pages)
    }),
    { numRuns: 10 },
  )
})
