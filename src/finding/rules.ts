import type { ModelFacts } from './model-facts.ts'

/**
 * Every rule there is, with the facts its findings carry. A new rule begins with a line here; the type check
 * then asks for its sentence, and for its file where it is a rule of the check.
 */
export type RuleFacts = ReadingFacts & ModelFacts & CheckFacts

/** What can be wrong with a text before there is a plan. `found` and `wanted` are words for the maker. */
export type ReadingFacts = {
  'not-yaml': { readonly found: string; readonly wanted: string }
  'unknown-key': {
    readonly found: string
    readonly within: string
    readonly nearest?: string
    readonly allowed: string
  }
  'not-a-size': { readonly found: string; readonly wanted: string; readonly nearest?: string }
}

/** What a check of the model can find. */
export type CheckFacts = {
  /** `what` is a hole, row, slot or notch; `wanted` is "left or right, and one from bottom or top". */
  'position-missing': { readonly what: string; readonly wanted: string }
  /** `what` as above or "part"; `wanted` is the size's name. */
  'size-missing': { readonly what: string; readonly wanted: string }
  /** `beyond` is the edge or corner that it passes; how far is the finding's `measured`. */
  'outside-part': { readonly beyond: string }
}
