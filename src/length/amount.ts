import type { Basis } from './scope.ts'
import { toMillimetres, type Unit } from './unit.ts'

/** What a value in a formula measures. */
export type Dimension = 'number' | 'length' | 'angle'

/**
 * A value while a formula is calculated: lengths in millimetres, angles in degrees. `value` is absent where the
 * drawing does not give it, and `lacking` then holds the names that lack one.
 */
export type Amount = {
  readonly dimension: Dimension
  readonly value: number | undefined
  readonly basis: Basis
  readonly lacking: readonly string[]
}

/** What can go wrong in a step of arithmetic; the formula knows where it stands. */
export type StepFault =
  | 'wrong-kind'
  | 'length-times-length'
  | 'number-over-length'
  | 'division-by-zero'
  | 'root-of-negative'
  | 'step-not-positive'
  | 'not-finite'

/** The result of a step on several amounts: scaled where one of them is, unknown where one of them is. */
export function combine(
  dimension: Dimension,
  from: readonly Amount[],
  calculate: (...values: readonly number[]) => number,
): Amount | StepFault {
  const basis = from.some(amount => amount.basis === 'scaled') ? 'scaled' : 'derived'
  const lacking = [...new Set(from.flatMap(amount => amount.lacking))]
  const values: number[] = []
  for (const { value } of from) {
    if (value === undefined) return { dimension, value: undefined, basis, lacking }
    values.push(value)
  }
  const value = calculate(...values)
  return Number.isFinite(value) ? { dimension, value, basis, lacking } : 'not-finite'
}

/**
 * The amounts brought to one dimension: a plain number beside a length is a length in the plan's unit, beside an
 * angle an angle in degrees. A length and an angle do not go together.
 */
export function alike(
  amounts: readonly Amount[],
  unit: Unit,
): { readonly dimension: Dimension; readonly amounts: readonly Amount[] } | StepFault {
  const measured = amounts.filter(amount => amount.dimension !== 'number')
  const dimension = measured[0]?.dimension ?? 'number'
  if (measured.some(amount => amount.dimension !== dimension)) return 'wrong-kind'
  return { dimension, amounts: amounts.map(amount => inDimension(amount, dimension, unit)) }
}

/** A plain number taken for a length or an angle; anything else as it is. */
export function inDimension(amount: Amount, dimension: Dimension, unit: Unit): Amount {
  if (amount.dimension !== 'number' || dimension === 'number') return amount
  const { value } = amount
  if (value === undefined || dimension === 'angle') return { ...amount, dimension }
  return { ...amount, dimension, value: toMillimetres(value, unit) }
}
