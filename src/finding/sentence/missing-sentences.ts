import type { MissingFacts } from '../check-facts.ts'
import type { FindingOf, Place } from '../finding.ts'
import { quoted, visible } from '../visible.ts'
import { type Sentences, theFeature } from './wording.ts'

export const missingSentences: Sentences<keyof MissingFacts> = {
  'position-missing': ({ facts, places }) =>
    `${theFeature(facts.what, places[0])} has no place${onFace(places[0])}; it wants a distance from ${facts.wanted}`,
  'radius-missing': notGiven,
  'diameter-missing': notGiven,
  'size-missing': notGiven,
  'scaled-size': ({ facts, measured }, { show }) =>
    `${quoted(facts.written)} was scaled off the drawing${measured ? `, ${show(measured)}` : ''}; ask for it or measure the thing itself, then take the ~ away${facts.confirm === '' ? '' : ` or list ${visible(facts.confirm)} under confirmed`}`,
}

function notGiven({
  facts,
  places,
}: FindingOf<'radius-missing' | 'diameter-missing' | 'size-missing'>): string {
  return `the drawing does not give the ${visible(facts.wanted)} of ${theFeature(facts.what, places[0])}`
}

function onFace(place: Place | undefined): string {
  return place?.side === undefined ? '' : ` on the ${visible(place.side)}`
}
