import fc from 'fast-check'
import { expect, test } from 'vitest'
import { evaluate, greatestLength } from '../../src/length/evaluate.ts'
import { readSize } from '../../src/length/read-size.ts'
import { toMillimetres } from '../../src/length/unit.ts'
import { toNumber } from './rational.ts'
import { givenLength } from './reading.ts'
import { formula, names, reference, written } from './reference-formula.ts'

const scope = new Map(
  Object.entries(names).map(([name, inches]) => [name, givenLength(toMillimetres(toNumber(inches), 'inch'))]),
)

test('a random formula comes to what a second evaluator in exact fractions says, or is refused for the same reason', () => {
  const outcomes = new Map<string, number>()
  fc.assert(
    fc.property(formula, formula => {
      const text = written(formula)
      fc.pre(text.length <= 1000)
      const wanted = reference(formula)
      fc.pre(wanted !== 'too-close')
      const size = readSize(text)
      if (!size.ok) {
        expect(size.fault.code).toBe('too-deep')
        return
      }
      const found = evaluate(size.value, scope, 'inch')
      const outcome = typeof wanted === 'string' ? wanted : 'calculated'
      outcomes.set(outcome, (outcomes.get(outcome) ?? 0) + 1)
      if (typeof wanted === 'string') {
        expect(found).toMatchObject({ ok: false, fault: { code: wanted } })
        return
      }
      const mm = 25.4 * toNumber(wanted.value)
      if (Math.abs(mm) > greatestLength) {
        expect(found).toMatchObject({ ok: false, fault: { code: 'too-large' } })
        return
      }
      expect(found).toMatchObject({ ok: true, value: { kind: 'length' } })
      const value = found.ok && found.value.kind === 'length' ? found.value.mm : Number.NaN
      expect(Math.abs(value - mm)).toBeLessThanOrEqual(30 * wanted.error + 1e-12)
    }),
    { numRuns: 5000 },
  )
  // the formulas were not all refused, nor all accepted
  for (const outcome of ['calculated', 'length-times-length', 'number-over-length']) {
    expect(outcomes.get(outcome) ?? 0).toBeGreaterThan(50)
  }
})
