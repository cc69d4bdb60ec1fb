import type { LengthStyle } from '../../length/precision.ts'
import { bothUnitsText } from '../../length/show-length.ts'
import { writeDecimal } from '../../number/write-decimal.ts'
import type { FindingOf, Place, RuleId } from '../finding.ts'
import type { Quantity } from '../quantity.ts'
import { excerpt, quoted, visible } from '../visible.ts'

/** Decimals of an angle in degrees: no mitre gauge has finer lines. */
const anglePlaces = 2

/** What a sentence needs to show quantities. */
export type Wording = {
  /** A quantity with its unit. */
  readonly show: (quantity: Quantity) => string
  /** How many, where a word behind it says of what. */
  readonly amount: (quantity: Quantity | undefined) => string
}

/** A sentence for each rule of a group. */
export type Sentences<R extends RuleId> = {
  readonly [K in R]: (finding: FindingOf<K>, wording: Wording) => string
}

export function wordingIn(plan: LengthStyle): Wording {
  const style = plan.unit === 'mm' ? { ...plan, precision: Math.min(plan.precision, sentenceStep) } : plan
  return {
    show: ({ value, unit }) => {
      if (unit === 'mm') return bothUnitsText(value, style)
      if (unit === 'degree') return `${writeDecimal(value, anglePlaces)}°`
      return unit === 'byte' ? `${grouped(value)} bytes` : grouped(value)
    },
    amount: quantity => (quantity ? grouped(quantity.value) : 'too many'),
  }
}

/**
 * What is measured is said to a hundredth of a millimetre, though the plan's own sizes are shown more coarsely: else
 * every sentence would need the rounded length and the true one.
 */
const sentenceStep = 0.01

/** `1,048,576` whatever the machine's language. */
function grouped(value: number): string {
  return String(value).replace(/\B(?=(\d{3})+$)/g, ',')
}

/** `; did you mean "thickness"?`, where there is a nearest name. */
export function didYouMean(nearest: string | undefined): string {
  return nearest === undefined ? '' : `; did you mean ${quoted(nearest)}?`
}

/** As many letters of a list as a sentence repeats. */
export const longestList = 160

/** ` (known: thickness, width)`, where there is anything to list. */
export function listed(word: string, names: string): string {
  return names === '' ? '' : ` (${word}: ${visible(excerpt(names, longestList))})`
}

/** `hole front-axle of side-frame`, `part side-frame`: what of it is known. */
export function theFeature(what: string, place: Place | undefined): string {
  const owner = place?.piece ?? place?.part
  const words = [what, place?.feature ?? (what === 'part' ? owner : undefined)].filter(
    word => word !== undefined,
  )
  const feature = visible(words.join(' ').trim())
  return owner === undefined || what === 'part' ? feature : `${feature} of ${visible(owner)}`
}
