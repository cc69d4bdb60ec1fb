import type { Source } from '../finding/source.ts'

/**
 * How a value came to be: `given` on the drawing, `scaled` off the paper (or calculated from something that
 * was), `derived` by a formula, `assumed` by the program where the plan is silent.
 */
export type Basis = 'given' | 'scaled' | 'derived' | 'assumed'

/** A length that is known, in millimetres, with what stands in the plan for it and where. */
export type Size = {
  readonly mm: number
  readonly basis: Basis
  readonly written: string
  readonly source: Source
}
