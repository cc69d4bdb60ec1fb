import type { Quantity } from './quantity.ts'

/**
 * Every rule there is, with the facts its findings carry. A new rule begins with a line here; the type check
 * then asks for its sentence, and for its file where it is a rule of the check.
 */
export type RuleFacts = ReadingFacts & CheckFacts

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
  'position-missing': { readonly wanted: string }
  'outside-part': { readonly beyond: string; readonly by: Quantity }
}
