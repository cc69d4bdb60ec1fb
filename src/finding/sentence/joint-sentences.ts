import type { JointFacts } from '../check-facts.ts'
import type { FindingOf, Place } from '../finding.ts'
import type { Quantity } from '../quantity.ts'
import { visible } from '../visible.ts'
import { type Sentences, theFeature, type Wording } from './wording.ts'

export const jointSentences: Sentences<keyof JointFacts> = {
  'pin-hole-width': pinHoleWidth,
  'pin-hole-depth': pinHoleDepth,
  'pin-holes-apart': ({ facts: { pin, from, one, another }, places, measured }, { show }) =>
    `the holes for ${visible(pin)} do not match: ${theFeature('hole', places[0])} is ${show(one)} from hole ${visible(from)}, and in ${partOf(places[2])} it is ${show(another)}${measured ? `, ${show(measured)} off` : ''}`,
  'pin-hole-count': ({ facts: { pin, count, other }, places }, { amount }) =>
    `${visible(pin)} pins ${amount(count)} holes of ${partOf(places[0])} to ${amount(other)} of ${partOf(places.at(-1))}`,
  'tongue-fit': ({ facts: { tongue, direction, fault, room }, places, measured, limit }, wording) => {
    const slot = theFeature('opening', places[0])
    const sizes = `the opening is ${size(measured, wording)}, and the ${direction} with its fit ${size(limit, wording)}`
    const says = {
      tight: `does not go into ${slot}`,
      close: `goes into ${slot}, but not with the fit that is wanted`,
      loose: `is loose in ${slot}, by ${wording.show(room)}`,
    }
    return `${visible(tongue)} ${says[fault]}: ${sizes}`
  },
  'joined-twice': ({ places }) =>
    `${theFeature('opening', places[0])} is in two joints; one of them is meant for another`,
}

function pinHoleWidth(
  { facts, places, measured, limit }: FindingOf<'pin-hole-width'>,
  wording: Wording,
): string {
  const { pin, fault, other = 'another pin' } = facts
  const hole = theFeature('hole', places[0])
  const width = size(measured, wording)
  switch (fault) {
    case 'other-pin':
      return `${hole} is made for ${visible(other)}, and the joint puts ${visible(pin)} into it`
    case 'tight':
      return `${visible(pin)} does not go into ${hole}: the hole is ${width} wide, and the pin ${size(limit, wording)}`
    case 'loose':
      return `${visible(pin)} is loose in ${hole}: the hole is ${width} wide, and ${size(limit, wording)} lets it turn`
  }
}

function pinHoleDepth(
  { facts: { pin, fault, length }, measured, limit }: FindingOf<'pin-hole-depth'>,
  wording: Wording,
): string {
  const sizes = `the holes together are ${size(measured, wording)} deep, and the pin is ${wording.show(length)} long`
  switch (fault) {
    case 'shallow': {
      const glued = limit !== undefined && limit.value > length.value
      return glued
        ? `${visible(pin)} leaves no room for glue: ${sizes}; ${wording.show(limit)} of depth is wanted`
        : `${visible(pin)} keeps the joint open: ${sizes}`
    }
    case 'deep':
      return `${visible(pin)} is short in its holes: ${sizes}`
    case 'short-pin':
      return `${visible(pin)} does not reach through: ${sizes}`
  }
}

function partOf(place: Place | undefined): string {
  return visible(place?.piece ?? place?.part ?? 'the other part')
}

function size(quantity: Quantity | undefined, { show }: Wording): string {
  return quantity === undefined ? 'another size' : show(quantity)
}
