import { radians } from '../number/degrees.ts'
import { type Amount, type Dimension, inDimension, type StepFault } from './amount.ts'
import { apply, negate, operate } from './arithmetic.ts'
import type { Expression } from './expression.ts'
import { faultAt, type LengthFault, type Read, read, refused } from './fault.ts'
import { nearestName } from './nearest-name.ts'
import type { Basis, KnownLength, NamedValue, Scope, UnknownValue } from './scope.ts'
import type { Unit } from './unit.ts'
import type { WrittenSize } from './written-size.ts'

/** Nothing that a plan describes is longer: a kilometre, in millimetres. */
export const greatestLength = 1_000_000

/** What a size comes to. */
export type Calculated = KnownLength | UnknownValue

/**
 * What a written size comes to, in millimetres. A plain number at the end is in `unit`, the plan's. The basis is
 * `given` for a size as it was written, that of the name for a name alone, `derived` for anything calculated,
 * and `scaled` with a `~` or where any value in it is scaled. Where a value in it is unknown, so is the result.
 */
export function evaluate(size: WrittenSize, scope: Scope, unit: Unit): Read<Calculated> {
  const amount = amountOf(size, scope, unit)
  if (!('dimension' in amount)) return refused(amount)
  if (amount.dimension === 'angle') return refused(wholeFault(size, 'wrong-kind', 'a length, not an angle'))
  return asLength(size, amount, unit)
}

function asLength(size: WrittenSize, amount: Amount, unit: Unit): Read<Calculated> {
  const { value, basis, lacking } = inDimension(amount, 'length', unit)
  if (value === undefined) return read({ kind: 'unknown', names: lacking })
  if (Math.abs(value) > greatestLength) {
    return refused(wholeFault(size, 'too-large', 'a length of at most 1 km'))
  }
  return read({ kind: 'length', mm: value, basis })
}

/** An angle in radians, anticlockwise positive. */
export type KnownAngle = { readonly kind: 'angle'; readonly radians: number; readonly basis: Basis }

/** What a written angle comes to. A plain number at the end is in degrees; `unit` is that of lengths in it. */
export function evaluateAngle(size: WrittenSize, scope: Scope, unit: Unit): Read<KnownAngle | UnknownValue> {
  const amount = amountOf(size, scope, unit)
  if (!('dimension' in amount)) return refused(amount)
  const { dimension, value, basis, lacking } = amount
  if (dimension === 'length') return refused(wholeFault(size, 'wrong-kind', 'an angle in degrees: 22 1/2'))
  if (value === undefined) return read({ kind: 'unknown', names: lacking })
  if (Math.abs(value) > 360) return refused(wholeFault(size, 'too-large', 'an angle of at most 360 degrees'))
  return read({ kind: 'angle', radians: radians(value), basis })
}

/** What a name is to stand for: a plain number becomes a length, an angle stays one. */
export function evaluateNamed(size: WrittenSize, scope: Scope, unit: Unit): Read<NamedValue> {
  const amount = amountOf(size, scope, unit)
  if (!('dimension' in amount)) return refused(amount)
  const { dimension, value, basis } = amount
  if (dimension !== 'angle') return asLength(size, amount, unit)
  return read(
    value === undefined
      ? { kind: 'unknown', names: amount.lacking }
      : { kind: 'angle', angleDegrees: value, basis },
  )
}

function wholeFault(size: WrittenSize, code: LengthFault['code'], wanted: string): LengthFault {
  return faultAt(size.written, { from: 0, to: size.written.length }, code, wanted)
}

function amountOf(size: WrittenSize, scope: Scope, unit: Unit): Amount | LengthFault {
  if (size.kind === 'unknown') return unknownAmount([])
  const amount = calculate(size.expression)
  return size.scaled && 'dimension' in amount ? { ...amount, basis: 'scaled' } : amount

  function calculate(expression: Expression): Amount | LengthFault {
    switch (expression.kind) {
      case 'number':
        return given('number', expression.value)
      case 'length':
        return given('length', expression.mm)
      case 'angle':
        return given('angle', expression.angleDegrees)
      case 'name':
        return named(expression.name, expression)
      case 'negative': {
        const of = calculate(expression.of)
        return 'dimension' in of ? negate(of) : of
      }
      case 'operation': {
        const left = calculate(expression.left)
        if (!('dimension' in left)) return left
        const right = calculate(expression.right)
        if (!('dimension' in right)) return right
        const result = operate(expression.operator, left, right, unit)
        if (typeof result !== 'string') return result
        return stepFault(result, result === 'division-by-zero' ? expression.right : expression)
      }
      case 'call': {
        const values: Amount[] = []
        for (const argument of expression.arguments) {
          const value = calculate(argument)
          if (!('dimension' in value)) return value
          values.push(value)
        }
        const result = apply(expression.name, values, unit)
        return typeof result === 'string' ? stepFault(result, expression) : result
      }
    }
  }

  function named(name: string, span: Expression): Amount | LengthFault {
    const value = scope.get(name)
    if (value === undefined) {
      const near = nearestName(name, scope.keys())
      return faultAt(size.written, span, 'unknown-name', 'a name from let, or a size', near)
    }
    switch (value.kind) {
      case 'length':
        return given('length', value.mm, value.basis)
      case 'angle':
        return given('angle', value.angleDegrees, value.basis)
      case 'number':
        return given('number', value.value, value.basis)
      case 'unknown':
        // it may measure anything, and a plain number goes with anything
        return unknownAmount(value.names.length > 0 ? value.names : [name])
      case 'faulty':
        return faultAt(size.written, span, 'faulty-name', 'a name whose own formula has no fault')
    }
  }

  function stepFault(code: StepFault, span: Expression): LengthFault {
    return faultAt(size.written, span, code, wantedInstead[code])
  }
}

function given(dimension: Dimension, value: number, basis: Basis = 'given'): Amount {
  return { dimension, value, basis, lacking: [] }
}

function unknownAmount(lacking: readonly string[]): Amount {
  return { dimension: 'number', value: undefined, basis: 'given', lacking }
}

const wantedInstead: Readonly<Record<StepFault, string>> = {
  'wrong-kind': 'lengths with lengths, angles with angles, roots of plain numbers, sines of degrees',
  'length-times-length': 'a plain number on one side of the *',
  'number-over-length': 'a length before the /, with its unit mark, or a plain number after it',
  'division-by-zero': 'something other than 0 after the /',
  'root-of-negative': 'a number that is not negative',
  'step-not-positive': 'a step larger than 0 to round to',
  'not-finite': 'a value that can be calculated',
}
