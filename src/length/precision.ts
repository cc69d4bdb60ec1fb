import { coincident } from '../number/tolerance.ts'
import { writeDecimal } from '../number/write-decimal.ts'
import { faultAt, type Read, read, refused } from './fault.ts'
import { fromMillimetres, toMillimetres, type Unit } from './unit.ts'

/** How lengths are shown: in which unit, and to the nearest of which steps, in mm. */
export type LengthStyle = { readonly unit: Unit; readonly precision: number }

/** A rule in a shop has no finer lines. */
const finestDenominator = 128

/** Decimals of a step; finer ones are not shown. */
const mostPlaces = 4

/**
 * The denominator of the fractions a length is shown in: a power of two up to 128. None where the style is
 * millimetres or decimal inches.
 */
export function fractionDenominator({ unit, precision }: LengthStyle): number | undefined {
  if (unit !== 'inch') return undefined
  for (let denominator = 1; denominator <= finestDenominator; denominator *= 2) {
    if (Math.abs(toMillimetres(1 / denominator, 'inch') - precision) <= coincident) return denominator
  }
  return undefined
}

/** How many decimals the multiples of a style's step have, in its unit. */
export function decimalPlaces({ unit, precision }: LengthStyle): number {
  const step = writeDecimal(fromMillimetres(precision, unit), mostPlaces)
  return step.includes('.') ? step.length - step.indexOf('.') - 1 : 0
}

/**
 * Whether a plan's precision can be used: in inches 1, 1/2, 1/4 and so on to 1/128, in either unit a step of at
 * most 4 decimals (0.1, 0.5, 1). `written` is how it stands in the plan, for the fault.
 */
export function usablePrecision(style: LengthStyle, written: string): Read<LengthStyle> {
  const { unit, precision } = style
  const fraction = fractionDenominator(style) !== undefined
  const step = toMillimetres(Number(writeDecimal(fromMillimetres(precision, unit), mostPlaces)), unit)
  const decimal = step > 0 && Math.abs(step - precision) <= coincident
  if (precision > 0 && (fraction || decimal)) return read(style)
  const wanted =
    unit === 'inch' ? '1/64, 1/32, 1/16 and so on, or decimals such as 0.01' : '0.1, 0.5, 1 and so on'
  return refused(faultAt(written, { from: 0, to: written.length }, 'precision-unusable', wanted))
}
