import type { FindingOf, RuleId } from '../../src/finding/finding.ts'
import type { RuleFacts } from '../../src/finding/rules.ts'

/** A finding of a rule, as much of it as its sentence needs, and what it says in inches to the 64th. */
export type Case<R extends RuleId> = Partial<Omit<FindingOf<R>, 'rule'>> & {
  readonly facts: RuleFacts[R]
  readonly says: string
}
