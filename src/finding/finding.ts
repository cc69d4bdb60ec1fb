import type { FaceName } from './face-name.ts'
import type { Quantity } from './quantity.ts'
import type { RuleFacts } from './rules.ts'
import type { Source } from './source.ts'

/** The worst first. */
export const severities = ['error', 'warning', 'note'] as const
export type Severity = (typeof severities)[number]

/** What a finding speaks of: a place in a text, something in the model, or both. */
export type Place = {
  readonly source?: Source
  readonly part?: string
  readonly piece?: string
  readonly feature?: string
  readonly side?: string
  /** Where on the drawn part it is to be marked. */
  readonly at?: Spot
}

/** A point of a face in the face's own millimetres: x to the right and y up, as somebody sees it from outside. */
export type Spot = { readonly face: FaceName; readonly x: number; readonly y: number }

export type RuleId = keyof RuleFacts

/**
 * Something the maker should know, as data. The sentence is made from it in one place (`sentence.ts`); `facts`
 * holds what that sentence needs and differs from rule to rule.
 */
export type FindingOf<R extends RuleId> = {
  readonly rule: R
  readonly severity: Severity
  readonly places: readonly Place[]
  readonly measured?: Quantity
  readonly limit?: Quantity
  readonly facts: RuleFacts[R]
}

export type Finding = { [R in RuleId]: FindingOf<R> }[RuleId]
