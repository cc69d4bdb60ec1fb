import type { ValueFacts } from '../reading-facts.ts'
import { quoted } from '../visible.ts'
import { didYouMean, listed, type Sentences } from './wording.ts'

export const valueSentences: Sentences<keyof ValueFacts> = {
  'missing-value': ({ facts }) => `nothing stands here; wanted: ${facts.wanted}`,
  'wrong-kind': ({ facts }) =>
    `${facts.found}${facts.text === undefined ? '' : `, ${quoted(facts.text)},`} stands here; wanted: ${facts.wanted}`,
  'not-a-choice': ({ facts }) =>
    `${quoted(facts.found)} is not ${facts.of}${didYouMean(facts.nearest)}${listed('one of', facts.allowed)}`,
  'not-an-id': ({ facts }) =>
    `${quoted(facts.found)} cannot be a name; names are a small letter, then small letters, digits and hyphens${didYouMean(facts.nearest)}`,
  'not-a-name': ({ facts }) =>
    `${quoted(facts.found)} cannot name a size; wanted: ${facts.wanted}${didYouMean(facts.nearest)}`,
  'reserved-name': ({ facts }) => `${quoted(facts.name)} already means ${facts.means}; choose another name`,
  'not-a-count': ({ facts }) => `${quoted(facts.found)} does not count; wanted: ${facts.wanted}`,
  'not-a-size': ({ facts }) =>
    `${facts.found === '' ? 'this' : quoted(facts.found)} does not make a size; wanted: ${facts.wanted}${didYouMean(facts.nearest)}`,
}
