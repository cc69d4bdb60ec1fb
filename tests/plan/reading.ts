import { expect } from 'vitest'
import type { Finding } from '../../src/finding/finding.ts'
import { locate } from '../../src/finding/locate.ts'
import type { Plan } from '../../src/plan/plan.ts'
import { readPlan } from '../../src/plan/read-plan.ts'

/** A finding as a test compares it: what, where, and the facts. */
export type Seen = {
  readonly rule: string
  readonly line: number
  readonly column: number
  readonly facts: object
}

/** What a text gives, each finding with its line and column. */
export function findingsOf(text: string | Uint8Array): readonly Seen[] {
  const read = readPlan(text, 'plan.yaml')
  return read.findings.map(finding => ({
    rule: finding.rule,
    ...locate(read.text, startOf(finding)),
    facts: finding.facts,
  }))
}

/** The one thing that is wrong with a text. */
export function onlyFindingOf(text: string | Uint8Array): Seen {
  const seen = findingsOf(text)
  expect(seen.map(({ rule }) => rule)).toHaveLength(1)
  return seen[0]!
}

/** The plan of a text that is sound. */
export function planOf(text: string): Plan {
  const { plan, findings } = readPlan(text, 'plan.yaml')
  expect(findings).toEqual([])
  return plan!
}

/** A plan of one part, whose further lines are given; they begin at line 7 and are indented by four. */
export function withPart(...lines: readonly string[]): string {
  const head = ['paperjig: 1', 'title: Loom', 'units: inch', 'parts:', '  beam:', '    size: 12 x 2 x 3/4']
  return `${[...head, ...lines.map(line => `    ${line}`)].join('\n')}\n`
}

/** The same with one cut, whose first line, `- hole: peg`, is line 8. */
export function withCut(...lines: readonly string[]): string {
  return withPart('cuts:', ...lines.map((line, i) => `${i === 0 ? '- ' : '  '}${line}`))
}

function startOf(finding: Finding): number {
  return finding.places[0]?.source?.from ?? 0
}
