import { unmarkedError } from '../../length/show-length.ts'
import type { DepthPlace, InsideFacts } from '../check-facts.ts'
import type { Place } from '../finding.ts'
import type { Quantity } from '../quantity.ts'
import { visible } from '../visible.ts'
import { amountOf, inPlaces, named, outcome } from './wood-sentences.ts'
import { type Sentences, theFeature, type Wording } from './wording.ts'

export const insideSentences: Sentences<keyof InsideFacts> = {
  'holes-meet-inside': ({ facts, places, measured }, wording) =>
    `${theFeature('hole', places[0])} meets ${named('hole', places[1]?.feature)} inside the wood${inPlaces(facts.count)}, ${where(facts, wording)}${reaching(measured, wording)}: move one of them, or make it less deep`,
  'wall-inside': ({ facts, places, severity, measured, limit }, wording) =>
    `there is ${amountOf(measured, wording)} of wood between ${theFeature(facts.what, places[0])} and ${otherOf(facts.other, places[1])}${betweens[facts.between]}${inPlaces(facts.count)}, ${where(facts, wording)}, where ${amountOf(limit, wording)} is wanted; ${outcome('the wall', severity)}`,
  'cuts-meet-inside': ({ facts, places, measured }, wording) =>
    `${theFeature(facts.what, places[0])} meets ${named(facts.other, places[1]?.feature)} inside the wood${inPlaces(facts.count)}, ${where(facts, wording)}${reaching(measured, wording)}: make one of them less deep, or mitre what goes in`,
  'hole-comes-out': ({ facts, places, measured }, wording) => {
    const into = places[1] === undefined ? 'at' : 'in'
    const by = measured ? `, ${wording.show(measured)} beyond the wood` : ''
    const rim =
      facts.rim === 'whole' ? ', with all of its rim' : ', with part of its rim, so that the bit wanders'
    return `${theFeature('hole', places[0])} comes out ${into} ${otherOf(facts.into, places[1])}${by}${rim}${inPlaces(facts.count)}, ${where(facts, wording)}`
  },
  'exit-on-feature': ({ facts, places }, wording) =>
    `${theFeature('hole', places[0])} comes out of the ${visible(facts.face)} where ${named(facts.other, places[1]?.feature)} is${inPlaces(facts.count)}, ${where(facts, wording)}; move one of them, or stop the hole`,
  'out-of-reach': ({ facts, places, measured, limit }, { show }) => {
    const feature = `${theFeature(facts.what, places[0])}${inPlaces(facts.count)}`
    const face = visible(facts.face)
    switch (facts.why) {
      case 'no-wood':
        return `${feature} meets no wood from the ${face}: the part does not reach there`
      case 'deeper':
        return `under ${feature} the wood begins ${measured ? `${show(measured)} ` : ''}below the ${face}, which its depth is counted from; put it on the edge that is there`
      case 'in-the-way':
        return `no straight bit reaches ${feature}: ${measured ? `${show(measured)} ` : 'a little '}out from its face, ${face}, the part’s own wood is in its way${limit ? `, and it is ${show(limit)} to the open` : ''}`
    }
  },
}

const betweens: Readonly<Record<InsideFacts['wall-inside']['between'], string>> = {
  beside: '',
  crosswise: ' where they pass crosswise',
  before: ' at the end of the one',
}

/** What would be shown as nothing is no depth. */
function reaching(measured: Quantity | undefined, { show }: Wording): string {
  if (measured === undefined) return ''
  return measured.value <= unmarkedError
    ? '; they just touch'
    : `; they reach ${show(measured)} into each other`
}

/** A cut by its name, or what bounds the wood. */
function otherOf(other: string, second: Place | undefined): string {
  return second === undefined ? `the ${visible(other)}` : named(other, second.feature)
}

/** `12 mm from the left, 8 mm from the bottom and 5 mm from the front` */
function where({ end, fromEnd, edge, fromEdge, fromFront }: DepthPlace, { show }: Wording): string {
  return `${show(fromEnd)} from the ${visible(end)}, ${show(fromEdge)} from the ${visible(edge)} and ${show(fromFront)} from the front`
}
