import { expect, test } from 'vitest'
import { mostFeatures } from '../../src/model/build/count-features.ts'
import { built, modelOf, written } from './model-of.ts'

const rows = (parts: number, rowsEach: number): string => {
  const row = (i: number) =>
    `      - { row: r${i}, at: center, toward: right, spacing: 0.05, count: 1000, diameter: 0.02 }\n`
  const part = (i: number) =>
    `  plank-${i}:\n    size: 100 x 40 x 20\n    cuts:\n${Array.from({ length: rowsEach }, (_, r) => row(r)).join('')}`
  return `paperjig: 1\ntitle: Pier\nunits: mm\nparts:\n${Array.from({ length: parts }, (_, i) => part(i)).join('')}`
}

test('a plan may ask for twenty thousand holes', () => {
  const features = modelOf(rows(4, mostFeatures / 4000)).parts.flatMap(p => p.drawn.features)
  expect(features).toHaveLength(mostFeatures)
})

test('a plan that asks for more is refused before any is made, at the part that passes the limit', () => {
  const text = rows(100, 100)
  const { model, findings } = built(text)
  expect(model).toBeUndefined()
  expect(findings).toMatchObject([
    {
      rule: 'limit-passed',
      severity: 'error',
      measured: { value: 10_000_000, unit: 'count' },
      limit: { value: mostFeatures, unit: 'count' },
      places: [{ part: 'plank-0' }],
    },
  ])
  expect(written(text, findings[0]!.places[0]!.source!)).toBe('plank-0')
})
