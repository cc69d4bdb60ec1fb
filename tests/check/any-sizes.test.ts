import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readModel } from '../../src/app/read-model.ts'
import { sentence } from '../../src/finding/sentence.ts'

const plans = ['faulty', 'sound'].flatMap(folder =>
  readdirSync(new URL(folder, import.meta.url)).map(file =>
    readFileSync(new URL(`${folder}/${file}`, import.meta.url), 'utf8'),
  ),
)

/** A number of the text, by its place, and what stands there instead: as it was times a factor, or another one. */
const change = fc.record({
  place: fc.nat(),
  factor: fc.constantFrom(0.01, 0.1, 0.5, 0.9, 0.999, 1.001, 1.1, 2, 10, 0),
})

/** The version stands first and is left alone. */
function changed(
  text: string,
  changes: readonly { readonly place: number; readonly factor: number }[],
): string {
  const numbers = [...text.matchAll(/(?<![\w/.-])\d+(?:\.\d+)?(?![\w/.-])/g)].slice(1)
  const at = new Map(changes.map(({ place, factor }) => [numbers[place % numbers.length]!.index, factor]))
  return text.replace(/(?<![\w/.-])\d+(?:\.\d+)?(?![\w/.-])/g, (number, index: number) => {
    const factor = at.get(index)
    return factor === undefined ? number : String(Number((Number(number) * factor).toFixed(4)))
  })
}

test('whatever sizes stand in a plan, every finding has a place, finite values and a sentence', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...plans),
      fc.array(change, { minLength: 1, maxLength: 4 }),
      (plan, changes) => {
        const { findings, style } = readModel({ text: changed(plan, changes), file: 'pier.yaml' })
        for (const finding of findings) {
          expect(finding.places[0]?.source).toBeDefined()
          for (const quantity of [finding.measured, finding.limit, ...Object.values(finding.facts)]) {
            if (typeof quantity === 'object') expect(quantity.value).toSatisfy(Number.isFinite)
          }
          expect(sentence(finding, style)).not.toMatch(/undefined|NaN|\[object/)
        }
      },
    ),
    { numRuns: 300 },
  )
})
