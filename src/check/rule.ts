import type { FindingOf, RuleId } from '../finding/finding.ts'
import type { Model } from '../model/part.ts'

/** One question to the model. It finds once a part, on the piece as drawn, in the plan's order. */
export type Rule<R extends RuleId> = (model: Model) => readonly FindingOf<R>[]
