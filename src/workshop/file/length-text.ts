import { nearestFraction } from '../../length/nearest-fraction.ts'
import { fromMillimetres, toMillimetres, type Unit } from '../../length/unit.ts'
import { coincident } from '../../number/tolerance.ts'
import { writeDecimal } from '../../number/write-decimal.ts'

/** Fractions of an inch are written to this one. */
const finestFraction = 128

/** Decimals that a maker would write; a size that needs more of them is written another way. */
const shortDecimals = 3

/** Decimals of a size that has no short name: a nanometre. */
const longDecimals = 6

/**
 * A length as it is written in a file of this unit, so that reading it gives the length back: `1/64`, `0.035`,
 * `1/64"` in a file of millimetres, `0.123456 mm` in one of inches.
 */
export function lengthText(mm: number, unit: Unit): string {
  const bare = unit === 'inch' ? (fractionText(mm) ?? decimalText(mm, 'inch')) : decimalText(mm, 'mm')
  if (bare !== undefined) return bare
  const fraction = unit === 'mm' ? fractionText(mm) : undefined
  if (fraction !== undefined) return `${fraction}"`
  return `${writeDecimal(mm, longDecimals)}${unit === 'mm' ? '' : ' mm'}`
}

function fractionText(mm: number): string | undefined {
  const { negative, whole, over, under, error } = nearestFraction(mm, finestFraction)
  if (negative || Math.abs(error) > coincident) return undefined
  if (over === 0) return String(whole)
  return whole === 0 ? `${over}/${under}` : `${whole} ${over}/${under}`
}

function decimalText(mm: number, unit: Unit): string | undefined {
  const text = writeDecimal(fromMillimetres(mm, unit), shortDecimals)
  return Math.abs(toMillimetres(Number(text), unit) - mm) <= coincident ? text : undefined
}
