import type { ModelFacts, ReferenceFacts, ShapeFacts } from './model-facts.ts'
import type { PaperFacts } from './paper-facts.ts'
import type { ReadingFacts } from './reading-facts.ts'
import type { WorkshopFacts } from './workshop-facts.ts'

/**
 * Every rule there is, with the facts its findings carry. A new rule begins with a line here or in one of the
 * files named; the type check then asks for its sentence, and for its file where it is a rule of the check.
 */
export type RuleFacts = ReadingFacts &
  WorkshopFacts &
  ModelFacts &
  ReferenceFacts &
  ShapeFacts &
  CheckFacts &
  PaperFacts

/** What a check of the model can find. Part, feature and side stand in the finding's first place. */
export type CheckFacts = {
  /** `what` is a hole, row, slot or notch; `wanted` is "left or right, and one from bottom or top". */
  'position-missing': { readonly what: string; readonly wanted: string }
  /** `what` as above or "part"; `wanted` is the size's name. */
  'size-missing': { readonly what: string; readonly wanted: string }
  /** `what` as above; `beyond` is the edge or corner that it passes; how far is the finding's `measured`. */
  'outside-part': { readonly what: string; readonly beyond: string }
}
