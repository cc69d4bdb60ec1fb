import type { FindingOf, RuleId } from '../finding/finding.ts'
import type { Quantity } from '../finding/quantity.ts'
import type { RuleFacts } from '../finding/rules.ts'
import type { Source } from '../finding/source.ts'

/** What is measured and what it may be. */
type Measure = readonly [measured: Quantity, limit: Quantity]

/** An error in the text, at one place. */
export function fault<R extends RuleId>(
  rule: R,
  source: Source,
  facts: RuleFacts[R],
  measure?: Measure,
): FindingOf<R> {
  const finding = { rule, severity: 'error' as const, places: [{ source }], facts }
  return measure ? { ...finding, measured: measure[0], limit: measure[1] } : finding
}

/** More of something than a plan may have. */
export function limitPassed(
  source: Source,
  of: string,
  measured: number,
  limit: number,
  unit: Quantity['unit'] = 'count',
) {
  return fault('limit-passed', source, { of }, [
    { value: measured, unit },
    { value: limit, unit },
  ])
}
