import type { CheckFacts } from '../check-facts.ts'
import { insideSentences } from './inside-sentences.ts'
import { jointSentences } from './joint-sentences.ts'
import { missingSentences } from './missing-sentences.ts'
import { nameSentences } from './name-sentences.ts'
import { outlineSentences } from './outline-sentences.ts'
import { rowSentences } from './row-sentences.ts'
import { shopSentences } from './shop-sentences.ts'
import { woodSentences } from './wood-sentences.ts'
import type { Sentences } from './wording.ts'

export const checkSentences: Sentences<keyof CheckFacts> = {
  ...missingSentences,
  ...outlineSentences,
  ...woodSentences,
  ...insideSentences,
  ...rowSentences,
  ...shopSentences,
  ...jointSentences,
  ...nameSentences,
}
