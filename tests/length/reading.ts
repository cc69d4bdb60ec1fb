import { evaluate } from '../../src/length/evaluate.ts'
import type { LengthFault, Read } from '../../src/length/fault.ts'
import { readSize } from '../../src/length/read-size.ts'
import { emptyScope, type NamedValue, type Scope } from '../../src/length/scope.ts'
import type { Unit } from '../../src/length/unit.ts'

/** The value, or a failed test that shows the fault. */
export function value<T>(read: Read<T>): T {
  if (!read.ok) throw new Error(JSON.stringify(read.fault))
  return read.value
}

/** The fault, or a failed test that shows what was read instead. */
export function fault<T>(read: Read<T>): LengthFault {
  if (read.ok) throw new Error(`read without a fault: ${JSON.stringify(read.value)}`)
  return read.fault
}

export function calculated(text: string, unit: Unit = 'inch', scope: Scope = emptyScope) {
  return evaluate(value(readSize(text)), scope, unit)
}

export function mm(text: string, unit: Unit = 'inch', scope: Scope = emptyScope): number {
  const result = value(calculated(text, unit, scope))
  if (result.kind === 'unknown') throw new Error(`${text} is unknown`)
  return result.mm
}

export function givenLength(mm: number): NamedValue {
  return { kind: 'length', mm, basis: 'given' }
}
