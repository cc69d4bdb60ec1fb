import type { Side } from '../../finding/side.ts'
import { sides } from '../../finding/side.ts'
import type { CutPlan, Located } from '../plan.ts'
import { choice, located } from '../schema/leaf.ts'
import { position } from '../schema/position.ts'
import { optional, type Reader } from '../schema/reader.ts'
import { note } from '../schema/text.ts'

/** The cuts of one kind. */
export type CutOf<K extends CutPlan['kind']> = Extract<CutPlan, { kind: K }>

/** A reader for every kind of cut. */
export type CutReaders = { readonly [K in CutPlan['kind']]: Reader<CutOf<K>> }

/** Keys of cuts that stand in the plan file's description and are not read yet. */
export const laterCutKeys = ['for', 'fit', 'lean', 'bit', 'angle', 'first', 'last', 'page']

/** The keys that every kind of cut has. */
export const commonKeys = {
  at: optional(position),
  on: optional(choice('a side', sides)),
  note: optional(note),
}

export function onFront(on: Located<Side> | undefined, name: Located<string>): Located<Side> {
  return on ?? located('front', name.source)
}
