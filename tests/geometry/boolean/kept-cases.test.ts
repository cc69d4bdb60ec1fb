import { expect, test } from 'vitest'
import { keptCases } from '../corpus/corpus.ts'
import { brokenLaws } from './laws.ts'

for (const { name, first, second } of keptCases()) {
  test(`went wrong once: ${name}`, () => {
    expect(brokenLaws(first, second, 1)).toEqual([])
    expect(brokenLaws(second, first, 2)).toEqual([])
  })
}
