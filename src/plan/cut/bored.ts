import type { MappingPlace } from '../../yaml/document/tree.ts'
import { fault } from '../../yaml/fault.ts'
import type { JsonSchema } from '../../yaml/schema/json-schema.ts'
import { type Fail, optional } from '../../yaml/schema/reader.ts'
import { size } from '../../yaml/schema/size.ts'
import type {
  BitPlan,
  BoredPlan,
  BorePlan,
  FitPlan,
  LeanPlan,
  Located,
  MouthPlan,
  WrittenLength,
} from '../plan.ts'
import type { Faces } from '../schema/face.ts'
import { fit } from '../schema/fit.ts'
import { id } from '../schema/id.ts'
import { bit } from './bit.ts'
import { leans, leansFit } from './lean.ts'
import { counterbore, countersink } from './mouth.ts'

/** The keys of what is bored: a diameter, or the pin that goes in and how it sits; the depth; how it leans and what it ends in. */
export const boredKeys = {
  diameter: optional(size),
  for: optional(id),
  fit: optional(fit),
  depth: optional(size),
  lean: optional(leans),
  counterbore: optional(counterbore),
  countersink: optional(countersink),
  bit: optional(bit),
}

export const boredInJson: JsonSchema = { anyOf: [{ required: ['diameter'] }, { required: ['for', 'fit'] }] }

type Written = {
  readonly diameter?: WrittenLength
  readonly for?: Located<string>
  readonly fit?: FitPlan
  readonly depth?: WrittenLength
  readonly lean?: readonly LeanPlan[]
  readonly counterbore?: MouthPlan
  readonly countersink?: MouthPlan
  readonly bit?: BitPlan
}

/** How the holes of one cut are bored, on the faces that it lies on. */
export function bored(
  written: Written,
  on: Faces | undefined,
  place: MappingPlace,
  within: string,
  fail: Fail,
): BoredPlan | undefined {
  const { depth, lean = [], counterbore, countersink, bit } = written
  const bore = borePlan(written, place, within, fail)
  const fits = leansFit(lean, on?.[0].value ?? 'front', fail)
  if (counterbore && countersink) {
    const facts = { first: 'counterbore', second: 'countersink' }
    return void fail(fault('not-both', place.keys.get('countersink')!, facts))
  }
  const mouth = counterbore ?? countersink
  if (!bore || !fits) return undefined
  return {
    bore,
    ...(depth ? { depth } : {}),
    leans: lean,
    ...(mouth ? { mouth } : {}),
    ...(bit ? { bit } : {}),
  }
}

function borePlan(
  { diameter, for: pin, fit }: Written,
  { keys, heading }: MappingPlace,
  within: string,
  fail: Fail,
): BorePlan | undefined {
  if (diameter && (pin || fit)) {
    const second = pin ? 'for' : 'fit'
    return void fail(fault('not-both', keys.get(second)!, { first: 'diameter', second }))
  }
  if (diameter) return { kind: 'diameter', diameter }
  if (pin && fit) return { kind: 'for-pin', pin, fit }
  const missing = pin
    ? { key: 'fit', wanted: 'how the pin sits: turning, push, easy, glue, or a clearance' }
    : fit
      ? { key: 'for', wanted: 'the pin that goes in' }
      : { key: 'diameter', wanted: 'a size, such as 3/16, or the pin that goes in (for:) and its fit' }
  return void fail(fault('missing-key', pin ? keys.get('for')! : heading, { ...missing, within }))
}
