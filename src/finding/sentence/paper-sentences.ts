import type { PaperFacts } from '../paper-facts.ts'
import { quoted, visible } from '../visible.ts'
import { didYouMean, listed, type Sentences } from './wording.ts'

export const paperSentences: Sentences<keyof PaperFacts> = {
  'does-not-fit': ({ facts }, { show }) =>
    `the ${visible(facts.sheet)} is ${show(facts.width)} by ${show(facts.height)} and does not fit on ${visible(facts.paper)} paper, which has ${show(facts.freeWidth)} by ${show(facts.freeHeight)} to draw on; choose larger paper`,
  'letters-missing': ({ facts }) =>
    `the font has no picture of ${visible(facts.codes)}; the codes are printed in place of the letters`,
  'unknown-part': ({ facts }) =>
    `there is no part ${quoted(facts.found)}${didYouMean(facts.nearest)}${listed('parts', facts.allowed)}`,
  'unknown-paper': ({ facts }) =>
    `${quoted(facts.found)} is no paper; wanted: ${visible(facts.wanted)}${didYouMean(facts.nearest)}`,
  'narrower-than-kerf': ({ facts, limit }, { show }) =>
    `${visible(facts.what)} is too narrow in places for a kerf of ${limit === undefined ? 'that width' : show(limit)}: the machine cannot cut it as it is drawn`,
  'kerf-not-compensated': ({ facts, limit }, { show }) =>
    `the lines of ${visible(facts.sheet)} cannot be moved by half of ${limit === undefined ? 'the kerf' : `a kerf of ${show(limit)}`}; there is no file of it`,
}
