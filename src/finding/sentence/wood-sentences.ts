import type { WoodFacts } from '../check-facts.ts'
import type { FindingOf, Severity } from '../finding.ts'
import type { Quantity } from '../quantity.ts'
import { excerpt, visible } from '../visible.ts'
import { longestList, type Sentences, theFeature, type Wording } from './wording.ts'

export const woodSentences: Sentences<keyof WoodFacts> = {
  'outside-part': ({ facts, places, measured }, { show }) =>
    `${theFeature(facts.what, places[0])} goes ${measured ? `${show(measured)} ` : ''}past the ${visible(facts.beyond)} of the part`,
  'features-meet': ({ facts, places, measured }, { show, amount }) => {
    const { how, count, names } = facts
    const by = measured ? reaching(how, show(measured)) : ''
    const two = `${theFeature(facts.what, places[0])} ${how} ${named(facts.other, places[1]?.feature)}${by}`
    if (count.value <= 2) return `${two}; ${mendOf(how)}`
    return `${two}, the worst of ${amount(count)} cuts that run into one another (${visible(excerpt(names, longestList))}); ${how === 'meets' ? mendOf(how) : 'move them apart, or leave one of them'}`
  },
  'hole-near-edge': ({ facts, places, severity, measured, limit }, wording) =>
    `${theFeature(facts.what, places[0])}${alike(facts.count)} leaves ${amountOf(measured, wording)} of wood to the ${visible(facts.edge)}, where ${amountOf(limit, wording)} is wanted; ${outcome('the edge', severity)}`,
  'wall-too-thin': ({ facts, places, severity, measured, limit }, wording) => {
    const other = facts.other === 'edge' ? 'the edge' : named(facts.other, places[1]?.feature)
    return `there is ${amountOf(measured, wording)} of wood between ${theFeature(facts.what, places[0])} and ${other}${inPlaces(facts.count)}, where ${amountOf(limit, wording)} is wanted; ${outcome('the wall', severity)}`
  },
  'neck-too-narrow': ({ facts, places, severity, measured, limit }, wording) =>
    `${theFeature('part', places[0])} is ${amountOf(measured, wording)} wide ${wording.show(facts.left)} from the left and ${wording.show(facts.bottom)} from the bottom, ${grains[facts.grain]}, where ${amountOf(limit, wording)} is wanted; ${outcome('the neck', severity)}`,
  'too-deep': tooDeep,
  'entry-hole': ({ facts, places, measured }, { show }) =>
    facts.diameter === undefined
      ? `no bit of the shop fits into the waste of ${theFeature('cut-out', places[0])} to let the blade in; say where and how wide (entry:)`
      : `the entry hole of ${theFeature('cut-out', places[0])}, ${show(facts.diameter)} wide, goes ${measured ? `${show(measured)} ` : ''}past the line`,
}

const grains: Readonly<Record<WoodFacts['neck-too-narrow']['grain'], string>> = {
  along: 'along the grain',
  across: 'across the grain (short grain)',
  aslant: 'aslant to the grain',
}

export function named(what: string, name: string | undefined): string {
  return name === undefined ? visible(what) : `${what} ${visible(name)}`
}

type How = WoodFacts['features-meet']['how']

function reaching(how: How, amount: string): string {
  if (how === 'meets') return ` in the thickness, which is ${amount} less than both are deep`
  return how === 'overlaps' ? ` by ${amount}` : ''
}

function mendOf(how: How): string {
  if (how === 'meets') return 'nothing is left of the edge between them: make one of them less deep'
  return how === 'lies within'
    ? 'nothing is left there to cut'
    : 'move one of them, or make one cut of the two'
}

function alike({ value }: Quantity): string {
  return value > 1 ? `, as ${value - 1} more of its row,` : ''
}

export function inPlaces({ value }: Quantity): string {
  return value > 1 ? `, and so in ${value} places` : ''
}

export function amountOf(quantity: Quantity | undefined, { show }: Wording): string {
  return quantity === undefined ? 'too little' : show(quantity)
}

export function outcome(what: string, severity: Severity): string {
  return `${what} ${severity === 'error' ? 'will' : 'may'} break`
}

/** What goes right through is written otherwise. */
const throughInstead: Readonly<Record<string, string>> = {
  hole: 'leave the depth out where it goes through',
  slot: 'leave the depth out where it goes through',
  groove: 'make a slot of it where it goes through',
  rebate: 'make the part smaller, or a notch of it, where it goes through',
}

function tooDeep({ facts, places, measured, limit }: FindingOf<'too-deep'>, wording: Wording): string {
  const { show } = wording
  const cut = `${theFeature(facts.what, places[0])} is ${show(facts.depth)} deep`
  if (facts.depth.value >= facts.available.value) {
    return `${cut} in ${show(facts.available)} of wood and comes out on the other side; ${throughInstead[facts.what] ?? 'make it less deep'}`
  }
  const point = facts.point.value > 0 ? `, and the point of the bit stands ${show(facts.point)} further` : ''
  if (measured !== undefined && measured.value <= 0) {
    return `${cut} in ${show(facts.available)} of wood${point}: it comes out on the other side`
  }
  return `${cut} in ${show(facts.available)} of wood${point}: ${amountOf(measured, wording)} is left under it, where ${amountOf(limit, wording)} is wanted`
}
