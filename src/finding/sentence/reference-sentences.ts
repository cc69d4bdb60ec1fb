import type { ReferenceFacts } from '../model-facts.ts'
import { quoted, visible } from '../visible.ts'
import { didYouMean, listed, type Sentences } from './wording.ts'

export const referenceSentences: Sentences<keyof ReferenceFacts> = {
  'unknown-cut': ({ facts }) =>
    `${quoted(facts.within)} has no cut or side ${quoted(facts.found)}${didYouMean(facts.nearest)}${listed('cuts', facts.allowed)}`,
  'unknown-pin': ({ facts }) =>
    `there is no pin ${quoted(facts.found)}${didYouMean(facts.nearest)}${listed('pins', facts.allowed)}`,
  'unknown-edge': ({ facts }) =>
    `${quoted(facts.found)} is neither a side nor a straight edge of the outline with that name${didYouMean(facts.nearest)}${listed('known', facts.allowed)}`,
  'unknown-arc': ({ facts }) =>
    `no rounded corner and no arc of the outline is called ${quoted(facts.found)}, so it has no centre${didYouMean(facts.nearest)}${listed('known', facts.allowed)}`,
  'unknown-piece': ({ facts }, { show }) =>
    `there is no piece ${quoted(facts.found)}; of ${quoted(facts.part)} the plan makes ${show(facts.pieces)}`,
  'unknown-member': ({ facts }, { show }) =>
    `there is no hole ${quoted(facts.found)}; ${quoted(facts.row)} has ${show(facts.count)}`,
  'unknown-confirmed': ({ facts }) =>
    `${quoted(facts.found)} cannot be confirmed, nothing is called that${didYouMean(facts.nearest)}${listed('known', facts.allowed)}`,
  'place-cycle': ({ facts }) =>
    `these cuts are placed from each other, and none from a side: ${visible(facts.chain)}`,
  'from-other-face': ({ facts }) =>
    `${quoted(facts.cut)} lies on the ${visible(facts.face)}, so nothing here can be placed from it; wanted: ${visible(facts.wanted)}`,
  'no-joint': ({ facts }) =>
    `${quoted(facts.found)} does not serve in this joint; wanted: ${visible(facts.wanted)}`,
}
