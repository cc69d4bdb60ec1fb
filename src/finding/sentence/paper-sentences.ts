import type { PaperFacts } from '../paper-facts.ts'
import { quoted, visible } from '../visible.ts'
import { didYouMean, listed, type Sentences } from './wording.ts'

export const paperSentences: Sentences<keyof PaperFacts> = {
  'does-not-fit': ({ facts }, { show }) =>
    `the ${visible(facts.sheet)} is ${show(facts.width)} by ${show(facts.height)} and does not fit on ${visible(facts.paper)} paper, which has ${show(facts.freeWidth)} by ${show(facts.freeHeight)} to draw on: more pages than can be joined true; choose larger paper`,
  'seam-crosses': ({ facts }) =>
    `a seam between the pages of the ${visible(facts.sheet)} runs through ${visible(facts.what)}, and no other position spares them; check them when the pages are joined`,
  'no-room-on-paper': ({ facts }) =>
    `${visible(facts.paper)} paper has no room to draw on between such margins; choose larger paper or smaller margins`,
  'unusable-length': ({ facts, limit }, { show }) =>
    `${quoted(facts.found)} is no ${visible(facts.name)}; wanted: a length from ${show(facts.least)} to ${limit === undefined ? 'more' : show(limit)}, such as 10 mm`,
  'letters-missing': ({ facts }) =>
    `the font has no picture of ${visible(facts.codes)}; the codes are printed in place of the letters`,
  'unknown-part': ({ facts }) =>
    `there is no part ${quoted(facts.found)}${didYouMean(facts.nearest)}${listed('parts', facts.allowed)}`,
  'unknown-paper': ({ facts }) =>
    `${quoted(facts.found)} is no paper; wanted: ${visible(facts.wanted)}${didYouMean(facts.nearest)}`,
}
