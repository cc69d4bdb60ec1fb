import { describe, expect, it } from 'vitest'
import { maxCuts, maxLabelLength, maxNoteLength, maxParts } from '../../src/plan/limits.ts'
import { readPlan } from '../../src/plan/read-plan.ts'
import { maxAliases, maxBytes, maxFindings, maxNesting, maxTokens, maxValues } from '../../src/yaml/limits.ts'
import { keptPromise } from './promise.ts'
import { findingsOf, onlyFindingOf, withPart } from './reading.ts'

/** What was too much, and how much is allowed. */
function limitOf(text: string | Uint8Array) {
  const [finding] = keptPromise(text).findings
  return [finding?.rule, finding?.limit?.value]
}

describe('a plan has at most', () => {
  it('so many bytes, and is not looked at beyond', () => {
    const fifty = 'a'.repeat(50 * 1000 * 1000)
    for (const input of [fifty, new TextEncoder().encode(fifty)]) {
      const { findings, text } = readPlan(input, 'plan.yaml')
      expect(findings).toMatchObject([
        {
          rule: 'limit-passed',
          measured: { value: 50_000_000, unit: 'byte' },
          limit: { value: maxBytes, unit: 'byte' },
        },
      ])
      expect(text).toBe('')
    }
    expect(limitOf(`${withPart()}#${' '.repeat(maxBytes)}`)).toEqual(['limit-passed', maxBytes])
    expect(findingsOf(`${withPart()}#${' '.repeat(maxBytes - 100)}`)).toEqual([])
  })

  it('so many words and marks', () => {
    expect(limitOf('a:\n'.repeat(maxTokens / 2))).toEqual(['limit-passed', maxTokens])
  })

  it('so many levels of nesting, however they are written', () => {
    for (const opening of ['[', '{', '- ', '? ', '{a: ', '[[', '{? ']) {
      expect(limitOf(opening.repeat(100_000))).toEqual(['limit-passed', maxNesting])
    }
    const lines = Array.from({ length: 1000 }, (_, i) => `${' '.repeat(i)}a:`)
    expect(limitOf(lines.join('\n'))).toEqual(['limit-passed', maxNesting])
  })

  it('so many levels by aliases', () => {
    const steps = Array.from({ length: 100 }, (_, i) => `a${i + 1}: &a${i + 1} [*a${i}]`)
    expect(limitOf(`paperjig: 1\na0: &a0 [1]\n${steps.join('\n')}\n`)).toEqual(['limit-passed', maxNesting])
  })

  it('so many values once the aliases are written out', () => {
    const rows = Array.from({ length: 9 }, (_, i) => `a${i + 1}: &a${i + 1} [${`*a${i},`.repeat(10)}]`)
    const laughs = `paperjig: 1\na0: &a0 [${'ha,'.repeat(1000)}]\n${rows.join('\n')}\n`
    const [rule, limit] = limitOf(laughs)
    expect(rule).toBe('limit-passed')
    expect([maxValues, maxAliases]).toContain(limit)
  })

  it('so many parts, cuts and letters', () => {
    const parts = Array.from({ length: maxParts + 1 }, (_, i) => `  p${i}: { size: 1 x 1 x 1 }`).join('\n')
    expect(limitOf(`paperjig: 1\ntitle: T\nunits: mm\nparts:\n${parts}\n`)).toEqual([
      'limit-passed',
      maxParts,
    ])
    const cuts = Array.from({ length: maxCuts + 1 }, (_, i) => `  - { hole: h${i}, diameter: 1 }`)
    expect(limitOf(withPart('cuts:', ...cuts))).toEqual(['limit-passed', maxCuts])
    expect(limitOf(withPart(`label: ${'W'.repeat(maxLabelLength + 1)}`))[1]).toBe(maxLabelLength)
    expect(limitOf(withPart(`note: ${'W'.repeat(maxNoteLength + 1)}`))[1]).toBe(maxNoteLength)
    expect(findingsOf(withPart(`label: ${'W'.repeat(maxLabelLength)}`))).toEqual([])
  })

  it('so many findings, and says that there are more', () => {
    const keys = Array.from({ length: 500 }, (_, i) => `key${i}: 1`)
    const seen = findingsOf(withPart(...keys))
    expect(seen).toHaveLength(maxFindings + 1)
    expect(seen.at(-1)).toMatchObject({ rule: 'findings-left-out', line: 7 + maxFindings })
  })
})

describe('what is heavy to read is given up early', () => {
  it.each([
    ['closing brackets', ']'.repeat(maxBytes)],
    ['pairs of brackets', '[]'.repeat(maxBytes / 2)],
    ['commas', `[${','.repeat(maxBytes - 1)}`],
    ['directives', '%a\n'.repeat(maxBytes / 3)],
    ['documents', '---\n'.repeat(maxBytes / 4)],
    ['quotation marks', '"'.repeat(maxBytes)],
    ['empty lines in quotes', `a: "${'\n'.repeat(maxBytes - 10)}"`],
    ['brackets in a size', withPart().replace('12 x', `${'('.repeat(maxBytes - 200)} x`)],
    ['one line of two million letters', withPart(`label: ${'x'.repeat(maxBytes - 200)}`)],
    ['one line of many comments', withPart(`label: x${' #1'.repeat(maxBytes / 4)}`)],
    ['values on one line', `[${'a,'.repeat(maxTokens / 2.1)}]`],
    ['commas on one line', `[${','.repeat(maxTokens / 1.1)}`],
    ['empty values on one line', `paperjig: 1\ntitle: { ${'a: ,'.repeat(maxTokens / 5)} }`],
    ['keys in keys on one line', `[${'a: b: ,'.repeat(maxTokens / 9)}]`],
    ['lines behind nested groups', `${'- '.repeat(38)}a${'\n'.repeat(maxTokens / 2)}`],
    ['spaces behind nested groups', `${'- '.repeat(38)}a\n${' '.repeat(maxBytes / 2)}`],
    ['anchors', `paperjig: 1\na: [${Array.from({ length: 60_000 }, (_, i) => `&a${i} 1`).join(', ')}]`],
    ['wrong bytes', new Uint8Array(maxBytes).fill(0xff)],
  ])('%s', (_, text) => {
    const { plan, findings } = keptPromise(text)
    expect(plan === undefined || findings.length > 0).toBe(true)
  })

  it('many dashes are one fault', () => {
    expect(onlyFindingOf('- '.repeat(1000)).rule).toBe('limit-passed')
  })
})
