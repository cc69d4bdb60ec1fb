import type { Place } from '../finding.ts'
import type { CheckFacts } from '../rules.ts'
import { visible } from '../visible.ts'
import { type Sentences, theFeature } from './wording.ts'

export const checkSentences: Sentences<keyof CheckFacts> = {
  'position-missing': ({ facts, places }) =>
    `${theFeature(facts.what, places[0])} has no place${onFace(places[0])}; it wants a distance from ${facts.wanted}`,
  'size-missing': ({ facts, places }) =>
    `the drawing does not give the ${visible(facts.wanted)} of ${theFeature(facts.what, places[0])}`,
  'outside-part': ({ facts, places, measured }, { show }) =>
    `${theFeature(facts.what, places[0])} goes ${measured ? `${show(measured)} ` : ''}past the ${visible(facts.beyond)} of the part`,
}

function onFace(place: Place | undefined): string {
  return place?.side === undefined ? '' : ` on the ${visible(place.side)}`
}
