import type { Finding } from '../finding/finding.ts'
import type { CheckFacts } from '../finding/rules.ts'
import type { Model } from '../model/part.ts'
import { outsidePart } from './outside-part.ts'
import { positionMissing } from './position-missing.ts'
import type { Rule } from './rule.ts'
import { sizeMissing } from './size-missing.ts'

/** One line a rule; a rule whose facts are declared and whose line is missing fails the type check. */
const rules: { readonly [R in keyof CheckFacts]: Rule<R> } = {
  'position-missing': positionMissing,
  'size-missing': sizeMissing,
  'outside-part': outsidePart,
}

/** All that the rules find, in the order of the plan's text, then of the rules. */
export function check(model: Model): readonly Finding[] {
  return Object.values(rules)
    .flatMap((rule): readonly Finding[] => rule(model))
    .map((finding, order) => ({ finding, order, at: finding.places[0]?.source?.from ?? 0 }))
    .sort((a, b) => a.at - b.at || a.order - b.order)
    .map(({ finding }) => finding)
}
