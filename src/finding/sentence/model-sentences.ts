import type { ModelFacts } from '../model-facts.ts'
import { quoted, visible } from '../visible.ts'
import { didYouMean, listed, type Sentences } from './wording.ts'

export const modelSentences: Sentences<keyof ModelFacts> = {
  'size-formula': ({ facts }) =>
    `${quoted(facts.found)} cannot be worked out; wanted: ${visible(facts.wanted)}${didYouMean(facts.nearest)}`,
  'size-not-positive': ({ facts }, { show }) =>
    `${visible(facts.what)} comes to ${show(facts.size)}; it must be more than nothing`,
  'size-too-large': ({ facts }, { show }) =>
    `${visible(facts.what)} comes to ${show(facts.size)}; at most ${show(facts.largest)} can be drawn`,
  'angle-out-of-range': ({ facts }, { show }) =>
    `${visible(facts.what)} comes to ${show(facts.angle)}; wanted: more than ${show(facts.above)} and less than ${show(facts.below)}`,
  'mouth-too-narrow': ({ facts }, { show }) =>
    `the ${visible(facts.what)} is ${show(facts.mouth)} wide and the hole ${show(facts.hole)}; it must be wider than the hole`,
  'mouth-too-deep': ({ facts }, { show }) =>
    `the ${visible(facts.what)} goes ${show(facts.depth)} deep, and the ${visible(facts.of)} ${show(facts.available)}; it must be less deep than that`,
  'mouth-too-shallow': ({ facts }, { show }) =>
    `the counterbore is ${show(facts.depth)} deep, and leaning so far it comes out of the face again; at least ${show(facts.least)} is wanted`,
  'unknown-stock': ({ facts }) =>
    `there is no stock ${quoted(facts.found)}${didYouMean(facts.nearest)}${listed('in stock', facts.allowed)}`,
  'thickness-missing': () =>
    'the thickness is missing; write length x width x thickness, or the stock it is cut from (from:)',
  'corners-too-large': ({ facts }, { show }) =>
    `the corners along the ${visible(facts.edge)} take ${show(facts.corners)}, and it is ${show(facts.available)} long`,
  'row-direction': ({ facts }) =>
    `a row on this face cannot run toward ${quoted(facts.found)}${listed('one of', facts.allowed)}`,
  'precision-unusable': ({ facts }) =>
    `sizes cannot be shown in steps of ${quoted(facts.found)}; wanted: ${visible(facts.wanted)}`,
}
