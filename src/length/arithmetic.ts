import { cosDegrees, sinDegrees, tanDegrees } from '../number/degrees.ts'
import { nearestMultiple } from '../number/nearest-multiple.ts'
import { type Amount, alike, combine, type StepFault } from './amount.ts'
import type { FunctionName, Operator } from './expression.ts'
import type { Unit } from './unit.ts'

/** One of the four operations. A plain number beside a length is in `unit`. */
export function operate(operator: Operator, left: Amount, right: Amount, unit: Unit): Amount | StepFault {
  if (operator === '*') return multiply(left, right)
  if (operator === '/') return divide(left, right)
  const both = alike([left, right], unit)
  if (typeof both === 'string') return both
  return combine(both.dimension, both.amounts, (a = 0, b = 0) => (operator === '+' ? a + b : a - b))
}

export function negate(amount: Amount): Amount {
  // a minus before a number as it was given calculates nothing
  return { ...amount, value: amount.value === undefined ? undefined : 0 - amount.value }
}

function multiply(left: Amount, right: Amount): Amount | StepFault {
  if (left.dimension !== 'number' && right.dimension !== 'number') {
    return left.dimension === 'length' && right.dimension === 'length' ? 'length-times-length' : 'wrong-kind'
  }
  const dimension = left.dimension === 'number' ? right.dimension : left.dimension
  return combine(dimension, [left, right], (a = 0, b = 0) => a * b)
}

function divide(left: Amount, right: Amount): Amount | StepFault {
  if (right.value === 0) return 'division-by-zero'
  const alike = left.dimension === right.dimension
  if (!alike && right.dimension !== 'number') {
    return left.dimension === 'number' && right.dimension === 'length' ? 'number-over-length' : 'wrong-kind'
  }
  return combine(alike ? 'number' : left.dimension, [left, right], (a = 0, b = 1) => a / b)
}

/** A function of values whose count is right. */
export function apply(name: FunctionName, values: readonly Amount[], unit: Unit): Amount | StepFault {
  switch (name) {
    case 'min':
      return chosen(values, unit, Math.min)
    case 'max':
      return chosen(values, unit, Math.max)
    case 'sin':
      return ofAngle(values, sinDegrees)
    case 'cos':
      return ofAngle(values, cosDegrees)
    case 'tan':
      return ofAngle(values, tanDegrees)
    case 'sqrt':
      return root(values)
    case 'round':
      return rounded(values, unit)
  }
}

function chosen(values: readonly Amount[], unit: Unit, choose: (...of: readonly number[]) => number) {
  const all = alike(values, unit)
  return typeof all === 'string' ? all : combine(all.dimension, all.amounts, choose)
}

/** A plain number is taken for degrees. */
function ofAngle(values: readonly Amount[], calculate: (angleDegrees: number) => number): Amount | StepFault {
  if (values.some(value => value.dimension === 'length')) return 'wrong-kind'
  return combine('number', values, (angleDegrees = 0) => calculate(angleDegrees))
}

function root(values: readonly Amount[]): Amount | StepFault {
  if (values.some(value => value.dimension !== 'number')) return 'wrong-kind'
  if (values.some(value => value.value !== undefined && value.value < 0)) return 'root-of-negative'
  return combine('number', values, (value = 0) => Math.sqrt(value))
}

function rounded(values: readonly Amount[], unit: Unit): Amount | StepFault {
  const both = alike(values, unit)
  if (typeof both === 'string') return both
  const step = both.amounts[1]?.value
  if (step !== undefined && step <= 0) return 'step-not-positive'
  return combine(both.dimension, both.amounts, (value = 0, by = 1) => nearestMultiple(value, by) * by)
}
