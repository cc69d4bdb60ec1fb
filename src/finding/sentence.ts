import type { LengthStyle } from '../length/precision.ts'
import type { Finding, FindingOf, RuleId } from './finding.ts'
import { checkSentences } from './sentence/check-sentences.ts'
import { keySentences } from './sentence/key-sentences.ts'
import { modelSentences } from './sentence/model-sentences.ts'
import { paperSentences } from './sentence/paper-sentences.ts'
import { planSentences } from './sentence/plan-sentences.ts'
import { referenceSentences } from './sentence/reference-sentences.ts'
import { shapeSentences } from './sentence/shape-sentences.ts'
import { textSentences } from './sentence/text-sentences.ts'
import { valueSentences } from './sentence/value-sentences.ts'
import type { Sentences, Wording } from './sentence/wording.ts'
import { wordingIn } from './sentence/wording.ts'
import { workshopSentences } from './sentence/workshop-sentences.ts'
import { yamlSentences } from './sentence/yaml-sentences.ts'

/** Every rule's sentence. A rule without one fails the type check. */
const sentences: Sentences<RuleId> = {
  ...textSentences,
  ...yamlSentences,
  ...keySentences,
  ...valueSentences,
  ...planSentences,
  ...workshopSentences,
  ...modelSentences,
  ...referenceSentences,
  ...shapeSentences,
  ...checkSentences,
  ...paperSentences,
}

/**
 * A finding in one sentence of plain words: what was found, what was wanted, the nearest right name. It says no
 * file or line; a report puts those before it. Lengths are shown as `style` says.
 */
export function sentence(finding: Finding, style: LengthStyle): string {
  return sayWith(finding.rule, finding, wordingIn(style))
}

/** The union of findings is narrowed by the rule; TypeScript does not see that through the table. */
function sayWith<R extends RuleId>(rule: R, finding: Finding, wording: Wording): string {
  return sentences[rule](finding as FindingOf<R>, wording)
}
