import type { Source } from '../finding/source.ts'
import type { Located, WrittenLength } from '../yaml/written.ts'
import type { FitPlan } from './fit-plan.ts'

/** A dowel, axle or rod: whatever goes through or into holes. */
export type PinPlan = {
  readonly id: Located<string>
  readonly label?: Located<string>
  readonly note?: Located<string>
  readonly page?: Located<string>
  readonly diameter: WrittenLength
  readonly length?: WrittenLength
  readonly count?: Located<number>
  readonly wood?: Located<string>
}

/** `part`, `part/2`, `part.feature`, `part.left`, `part.row.3`, `part.row.all`: as written, taken apart. */
export type ReferencePlan = {
  readonly part: string
  /** Counted from 1; absent: every piece. */
  readonly piece?: number
  /** A cut, a side, or the name of an edge. */
  readonly name?: string
  /** Of a row, grid or circle of holes, counted from 1. */
  readonly member?: number | 'all'
  readonly written: string
  readonly source: Source
}

export type JointPlan =
  | {
      readonly kind: 'pin'
      readonly pin: Located<string>
      readonly through: readonly ReferencePlan[]
      readonly source: Source
    }
  | {
      readonly kind: 'tongue'
      readonly tongue: ReferencePlan
      readonly into: ReferencePlan
      readonly fit?: FitPlan
      readonly source: Source
    }
