import type { Outcome } from '../../../src/geometry/shape/outcome.ts'

/** The value of an outcome that has to be one; the fault is shown when it is not. */
export function valueOf<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value
  throw new Error(`${outcome.fault.operation}: ${outcome.fault.reason} ${JSON.stringify(outcome.fault.facts)}`)
}
