import type { CheckFacts } from './check-facts.ts'
import type { ModelFacts, ReferenceFacts, ShapeFacts } from './model-facts.ts'
import type { PaperFacts } from './paper-facts.ts'
import type { ReadingFacts } from './reading-facts.ts'
import type { WorkshopFacts } from './workshop-facts.ts'

/**
 * Every rule there is, with the facts its findings carry. A new rule begins with a line in one of the files named;
 * the type check then asks for its sentence, and for its file where it is a rule of the check.
 */
export type RuleFacts = ReadingFacts &
  WorkshopFacts &
  ModelFacts &
  ReferenceFacts &
  ShapeFacts &
  CheckFacts &
  PaperFacts
