import type { CutPlan } from '../../plan/plan.ts'
import type { Extent } from '../box-faces.ts'
import type { Feature, Missing, Unplaced } from '../feature.ts'
import type { Size } from '../size.ts'
import type { Context } from './context.ts'

/**
 * Makes the features that one kind of cut stands for. An empty list means that a value could not be had and that
 * it has been reported.
 */
export type CutBuilder<C extends CutPlan> = (context: Context, cut: C, extent: Extent) => readonly Feature[]

/** A size, the word that the drawing does not give it, or nothing where it has been reported as a fault. */
export type Resolved = Size | 'unknown' | undefined

export function unplaced(cut: CutPlan, missing: readonly Missing[]): readonly Feature[] {
  const shape: Unplaced = { kind: 'unplaced', what: cut.kind, missing }
  return [{ id: cut.id.value, face: cut.on.value, shape, source: cut.source }]
}

/** Those of the named sizes that the drawing does not give. */
export function missingSizes(sizes: Readonly<Record<string, Resolved | 'through'>>): readonly Missing[] {
  return Object.entries(sizes).flatMap(([name, size]) =>
    size === 'unknown' ? [{ kind: 'size' as const, name }] : [],
  )
}

/** Whether a size is known in millimetres. */
export function isKnown(size: Resolved): size is Size {
  return size !== undefined && size !== 'unknown'
}
