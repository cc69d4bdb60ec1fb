import type { RowFacts } from '../check-facts.ts'
import { visible } from '../visible.ts'
import { type Sentences, theFeature } from './wording.ts'

export const rowSentences: Sentences<keyof RowFacts> = {
  'row-off-part': ({ facts, places, measured }, { show, amount }) =>
    `${theFeature(facts.what, places[0])} runs off the part: ${amount(facts.count)} of its ${amount(facts.of)} holes stick out, the farthest ${measured ? `${show(measured)} ` : ''}past the ${visible(facts.beyond)}; look at the spacing, the count and the first place`,
  'row-uneven': ({ facts, places, measured }, { show }) =>
    `${theFeature('row', places[0])} begins ${show(facts.first)} from one end and stops ${show(facts.last)} from the other${measured ? `, ${show(measured)} from even` : ''}; with ${show(facts.even)} in place of ${show(facts.spacing)} it would be even, and center puts it in the middle`,
}
