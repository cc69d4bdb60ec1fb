import type { Finding } from '../../finding/finding.ts'
import type { Scope } from '../../length/scope.ts'
import type { Unit } from '../../length/unit.ts'

/** What the builders share: the plan's unit, the names that formulas may use, and where faults are noted down. */
export type Context = {
  readonly unit: Unit
  readonly scope: Scope
  readonly report: (finding: Finding) => void
}
