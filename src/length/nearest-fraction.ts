import { nearestMultiple } from '../number/nearest-multiple.ts'
import { coincident } from '../number/tolerance.ts'
import { writeDecimal } from '../number/write-decimal.ts'
import type { Pieces } from './pieces.ts'
import { toMillimetres } from './unit.ts'

/** A length in inches as a mixed number in lowest terms; a whole number has 0 over 1. */
export type Fraction = {
  readonly negative: boolean
  readonly whole: number
  readonly over: number
  readonly under: number
  /** The fraction less the true length, in mm: positive where the fraction is too large. */
  readonly error: number
}

/**
 * The fraction of an inch nearest to a length in mm, in steps of one over `denominator`, a whole number. Half-way
 * goes away from zero.
 */
export function nearestFraction(mm: number, denominator: number): Fraction {
  const steps = nearestMultiple(mm, toMillimetres(1 / denominator, 'inch'), coincident)
  const size = Math.abs(steps)
  const rest = size % denominator
  const common = greatestCommonDivisor(rest, denominator)
  return {
    negative: steps < 0,
    whole: (size - rest) / denominator,
    over: rest / common,
    under: denominator / common,
    error: toMillimetres(steps / denominator, 'inch') - mm,
  }
}

/** The fraction without a unit: `-`, the whole number, and the fraction to be set one over another. */
export function fractionPieces({ negative, whole, over, under }: Fraction): Pieces {
  const sign = negative ? ['-'] : []
  if (over === 0) return [`${negative ? '-' : ''}${writeDecimal(whole, 0)}`]
  const stacked = { over: writeDecimal(over, 0), under: writeDecimal(under, 0) }
  return [...sign, whole === 0 ? stacked : { whole: writeDecimal(whole, 0), ...stacked }]
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b)
}
