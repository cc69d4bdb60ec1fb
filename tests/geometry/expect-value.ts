import type { Outcome } from '../../src/geometry/shape/outcome.ts'

/** What an operation gave; a fault makes the test fail with its reason and facts. */
export function expectValue<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value
  const { operation, reason, facts } = outcome.fault
  throw new Error(`${operation}: ${reason} ${JSON.stringify(facts)}`)
}
