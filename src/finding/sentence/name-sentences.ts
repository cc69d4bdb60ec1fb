import type { NameFacts } from '../check-facts.ts'
import { quoted } from '../visible.ts'
import type { Sentences } from './wording.ts'

const kinds: Readonly<Record<string, string>> = { let: 'size', stock: 'stock', pin: 'pin' }

export const nameSentences: Sentences<keyof NameFacts> = {
  'name-unused': ({ facts }) =>
    `nothing uses the ${kinds[facts.kind] ?? 'name'} ${quoted(facts.name)}; use it, or take it away`,
  'label-twice': ({ facts }) => `two parts are labelled ${quoted(facts.label)}; give each a label of its own`,
}
