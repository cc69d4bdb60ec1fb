import type { ShopFacts } from '../check-facts.ts'
import type { Quantity } from '../quantity.ts'
import { visible } from '../visible.ts'
import { type Sentences, theFeature, type Wording } from './wording.ts'

export const shopSentences: Sentences<keyof ShopFacts> = {
  'bit-missing': ({ facts: { what, nearest, difference }, places, measured }, wording) =>
    `the shop has no bit of ${size(measured, wording)} for ${theFeature(what, places[0])}${nearest && difference ? `; the nearest is ${wording.show(nearest)}, ${offBy(difference, wording)}` : ''}`,
  'template-missing': ({ facts: { corners, nearest, difference }, measured }, wording) =>
    `the shop has no circle of ${size(measured, wording)} radius for the corners (${visible(corners)}); the nearest is ${wording.show(nearest)}, ${offBy(difference, wording)}`,
  'larger-than-stock': ({ facts, places, severity, measured, limit }, wording) => {
    const { direction, stock, boards } = facts
    const sizes = `${size(measured, wording)}, and ${visible(stock)} is ${size(limit, wording)}`
    if (boards === undefined) {
      return `the ${direction} of ${theFeature('part', places[0])} is ${sizes}; take other stock, or join boards`
    }
    const nothingOver = severity === 'warning' ? ', which leaves nothing for flattening' : ''
    return `the thickness of ${theFeature('part', places[0])} is ${sizes}; glue up ${wording.amount(boards)} boards${nothingOver}`
  },
  'measured-differs': ({ facts: { direction, difference, allowed }, places, measured, limit }, wording) =>
    `the block of ${theFeature('part', places[0])} measures ${size(measured, wording)} in its ${direction}, and the plan says ${size(limit, wording)}: ${offBy(difference, wording)}, where up to ${wording.show(allowed)} is usual; measure again, or give the part the size of the block`,
  'small-piece': ({ facts: { parts, count }, limit }, wording) =>
    `${count.value === 1 ? 'one part is' : `${wording.amount(count)} parts are`} under ${size(limit, wording)} at the longest (${visible(parts)}); cut ${count.value === 1 ? 'it' : 'them'} from a longer piece, or by hand in a mitre box`,
}

function size(quantity: Quantity | undefined, { show }: Wording): string {
  return quantity === undefined ? 'another size' : show(quantity)
}

function offBy({ value, unit }: Quantity, { show }: Wording): string {
  return `${show({ value: Math.abs(value), unit })} ${value > 0 ? 'more' : 'less'}`
}
