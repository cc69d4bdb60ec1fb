import type { Source } from '../finding/source.ts'
import type { Unit } from '../length/unit.ts'
import type { Located, WrittenLength } from '../yaml/written.ts'
import type { JointPlan, PinPlan } from './joint-plan.ts'
import type { PartPlan, TransferName } from './part-plan.ts'

export type * from '../yaml/written.ts'
export type * from './cut-plan.ts'
export type * from './fit-plan.ts'
export type * from './joint-plan.ts'
export type * from './outline-plan.ts'
export type * from './part-plan.ts'
export type * from './position-plan.ts'

/**
 * A plan as it was written: every key known and of the right kind, every size parsed and none calculated, and
 * each with the place where it stands. What the sizes come to is the model's business.
 */
export type Plan = {
  readonly file: string
  readonly version: 1
  readonly title: Located<string>
  readonly units: Unit
  /** The steps that sizes are shown in, for inches 1/64 and the like, for millimetres 0.1 and the like. */
  readonly precision: WrittenLength
  /** How shapes come from paper to wood, of the parts that do not say. */
  readonly transfer?: Located<TransferName>
  /** Which way round the views of a mark-out stand. */
  readonly projection?: Located<'third' | 'first'>
  readonly names: readonly NamedSize[]
  readonly stock: readonly StockPlan[]
  readonly pins: readonly PinPlan[]
  readonly parts: readonly PartPlan[]
  readonly joints: readonly JointPlan[]
  /** What was scaled off the drawing and has been measured or asked for since. */
  readonly confirmed: readonly ConfirmedPlan[]
}

/** A name from `let`, of a stock, pin or part, or of one cut of a part: all that is scaled in it counts as given. */
export type ConfirmedPlan = {
  readonly name: string
  /** A cut of the part that `name` is. */
  readonly cut?: string
  readonly source: Source
}

/** An entry of `let`. */
export type NamedSize = { readonly name: Located<string>; readonly length: WrittenLength }

export type StockPlan = {
  readonly id: Located<string>
  readonly label?: Located<string>
  readonly thickness: WrittenLength
  readonly width?: WrittenLength
  readonly length?: WrittenLength
  readonly count?: Located<number>
  readonly wood?: Located<string>
}
