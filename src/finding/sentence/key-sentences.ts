import type { KeyFacts } from '../reading-facts.ts'
import { quoted } from '../visible.ts'
import { didYouMean, listed, type Sentences } from './wording.ts'

export const keySentences: Sentences<keyof KeyFacts> = {
  'unknown-key': ({ facts }) =>
    `${quoted(facts.found)} is no key of ${facts.within}${didYouMean(facts.nearest)}${listed('known', facts.allowed)}`,
  'later-key': ({ facts }) =>
    `this version does not read ${quoted(facts.found)} in ${facts.within} yet; leave it out`,
  'missing-key': ({ facts }) =>
    `${facts.within} needs ${quoted(facts.key)}${facts.wanted === '' ? '' : `: ${facts.wanted}`}`,
  'key-not-text': ({ facts }) => `${quoted(facts.found)} cannot be a key; a key is one word, such as size`,
  'duplicate-key': ({ facts }) => `${quoted(facts.key)} stands here a second time; keep one of the two`,
}
