import type { Reader } from '../../yaml/schema/reader.ts'
import { optional } from '../../yaml/schema/reader.ts'
import type { CutPlan, Located } from '../plan.ts'
import { faces } from '../schema/face.ts'
import { position } from '../schema/position.ts'
import { label, note } from '../schema/text.ts'

/** The cuts of one kind. */
export type CutOf<K extends CutPlan['kind']> = Extract<CutPlan, { kind: K }>

/** A reader for every kind of cut. */
export type CutReaders = { readonly [K in CutPlan['kind']]: Reader<CutOf<K>> }

/** The keys that every kind of cut has: what the plan says about it in words. */
export const wordKeys = { label: optional(label), note: optional(note), page: optional(label) }

/** The keys of what has a place. */
export const commonKeys = { at: optional(position), ...wordKeys }

/** The keys of what is cut into a face. */
export const onFaceKeys = { ...commonKeys, on: optional(faces) }

type Described = {
  readonly label?: Located<string>
  readonly note?: Located<string>
  readonly page?: Located<string>
}

/** What the plan says about a cut in words, of all its keys. */
export function inWords({ label, note, page }: Described): Described {
  return { ...(label ? { label } : {}), ...(note ? { note } : {}), ...(page ? { page } : {}) }
}
