import type { OutlineFacts } from '../check-facts.ts'
import type { Place } from '../finding.ts'
import { visible } from '../visible.ts'
import { type Sentences, theFeature, type Wording } from './wording.ts'

export const outlineSentences: Sentences<keyof OutlineFacts> = {
  'outline-open': ({ facts, places, measured }, { show }) =>
    `${outlineOf(facts.what, places)} does not close: its two halves miss each other${measured ? ` by ${show(measured)}` : ''}; begin and end the half on the same axis`,
  'outline-crossing': ({ facts, places }, wording) =>
    `${outlineOf(facts.what, places)} crosses itself: ${visible(facts.edges)}${where(facts, wording)}; look at the order of the points and the turn of the arcs`,
  'outline-doubled': ({ facts, places }, wording) =>
    `${outlineOf(facts.what, places)} runs back over itself: ${visible(facts.edges)}${where(facts, wording)}; take one of the two away`,
  'outline-no-length': ({ facts, places }) =>
    `${outlineOf(facts.what, places)} has a step that leads to where it begins: ${visible(facts.edges)}; take it away or give it its size`,
  'size-differs': ({ facts }, { show }) =>
    `the ${facts.direction} of the outline comes to ${show(facts.drawn)}, and the size beside it says ${show(facts.stated)}; one of them is wrong`,
  'taper-disagrees': ({ facts }, { show }) =>
    `the two ends make an angle of ${show(facts.drawnAngle)}, and the drawing says ${show(facts.statedAngle)}; by that angle the narrow end is ${show(facts.widthByAngle)} wide; find out which of them is right`,
}

function outlineOf(what: string, [place]: readonly Place[]): string {
  return `the outline of ${theFeature(what, place)}`
}

function where({ left, bottom }: OutlineFacts['outline-crossing'], { show }: Wording): string {
  return left && bottom ? `, ${show(left)} from the left and ${show(bottom)} from the bottom` : ''
}
