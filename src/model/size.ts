import type { Source } from '../finding/source.ts'
import type { Basis } from '../length/scope.ts'

/** A length that is known, in millimetres, with what stands in the plan for it and where. */
export type Size = {
  readonly mm: number
  readonly basis: Basis
  readonly written: string
  readonly source: Source
}
