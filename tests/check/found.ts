import { expect } from 'vitest'
import { explain } from '../../src/check/registry.ts'
import type { CheckRule, Rule } from '../../src/check/rule.ts'
import { subjectOf } from '../../src/check/subject/subject.ts'
import type { FindingOf } from '../../src/finding/finding.ts'
import { defaultWorkshop } from '../../src/workshop/defaults.ts'
import type { Workshop } from '../../src/workshop/workshop.ts'
import { modelOf } from '../model/model-of.ts'

/** What one rule finds in a plan. Every finding has a place in the text, and every rule something to explain. */
export function found<R extends CheckRule>(
  rule: Rule<R>,
  text: string,
  workshop: Workshop = defaultWorkshop,
): readonly FindingOf<R>[] {
  const findings = rule.find(subjectOf(modelOf(text), workshop))
  for (const finding of findings) {
    expect(finding.places[0]?.source).toBeDefined()
    expect(explain(finding.rule)).toBe(rule.explanation)
  }
  return findings
}

/** The one finding of a rule. */
export function only<R extends CheckRule>(rule: Rule<R>, text: string, workshop?: Workshop): FindingOf<R> {
  const [finding, ...others] = found(rule, text, workshop)
  expect(others).toEqual([])
  expect(finding).toBeDefined()
  return finding!
}
