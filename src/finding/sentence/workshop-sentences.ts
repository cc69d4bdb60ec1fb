import { quoted, visible } from '../visible.ts'
import type { WorkshopFacts } from '../workshop-facts.ts'
import type { Sentences } from './wording.ts'

export const workshopSentences: Sentences<keyof WorkshopFacts> = {
  'setting-out-of-range': ({ facts }, { show }) =>
    `${visible(facts.what)} comes to ${show(facts.size)}; wanted: ${show(facts.least)} to ${show(facts.largest)}`,
  'not-a-time': ({ facts }) => `${quoted(facts.found)} is no time; wanted: ${facts.wanted}`,
  'steps-backward': ({ facts }) =>
    `${quoted(facts.found)} leads from the larger to the smaller; wanted: the smallest first, such as 1/32 to 1/2 by 1/64`,
}
