import { readSize } from '../../length/read-size.ts'
import type { Unit } from '../../length/unit.ts'
import type { Located, WrittenLength } from '../plan.ts'

/** The finest lines of a steel rule. */
const usual: Readonly<Record<Unit, string>> = { inch: '1/64', mm: '0.1' }

/** The steps sizes are shown in where the plan does not say; its place is that of the unit. */
export function usualPrecision({ value, source }: Located<Unit>): WrittenLength | undefined {
  const read = readSize(usual[value])
  return read.ok ? { size: read.value, source } : undefined
}
