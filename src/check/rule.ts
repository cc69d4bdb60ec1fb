import type { CheckFacts } from '../finding/check-facts.ts'
import type { FindingOf } from '../finding/finding.ts'
import type { Workshop } from '../workshop/workshop.ts'
import type { Subject } from './subject/subject.ts'

export type CheckRule = keyof CheckFacts

/** One question to the model. It finds once a part, on the piece as drawn, in the plan's order. */
export type Rule<R extends CheckRule> = {
  readonly find: (subject: Subject) => readonly FindingOf<R>[]
  readonly explanation: Explanation
}

/** What a maker wants to know about a rule. */
export type Explanation = {
  /** What it is for: what goes wrong in the wood. */
  readonly purpose: string
  /** What is held against what, with the figures of the shop. */
  readonly limit: (workshop: Workshop, show: (mm: number) => string) => string
  /** Where the limit comes from. */
  readonly origin: string
}

/** What most of the limits rest on. */
export const commonPractice = 'common practice, no source'

/** A rule that holds the plan against itself. */
export const noLimit = (): string => 'none: the plan is held against itself'
