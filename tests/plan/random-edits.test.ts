import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { everyKey } from './every-key.ts'
import { mutate, randomFrom } from './mutate.ts'
import { keptPromise, keptPromiseOfModel } from './promise.ts'

const plans = [
  everyKey,
  ...['cliff-car', 'pier-bracket', 'the-contract'].map(name =>
    readFileSync(new URL(`fixtures/plans/${name}.yaml`, import.meta.url), 'utf8'),
  ),
]

it('random edits of a plan give a plan or positioned findings, and nothing else; and so does its model', () => {
  fc.assert(
    fc.property(fc.nat(), fc.constantFrom(...plans), (seed, plan) => {
      keptPromiseOfModel(mutate(plan, randomFrom(seed)))
    }),
    { numRuns: 1500 },
  )
})

it('any bytes and any text, too', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 200 }), bytes => void keptPromise(bytes)),
    { numRuns: 500 },
  )
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), text => void keptPromise(text)),
    { numRuns: 500 },
  )
})

it('the unchanged plans keep the promise', () => {
  for (const plan of plans) keptPromise(plan)
  expect(keptPromise(plans[0]!).plan).toBeDefined()
})
