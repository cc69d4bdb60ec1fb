import type { MappingPlace } from '../../yaml/document/tree.ts'
import { fault } from '../../yaml/fault.ts'
import type { JsonSchema } from '../../yaml/schema/json-schema.ts'
import { type Fail, optional } from '../../yaml/schema/reader.ts'
import { size } from '../../yaml/schema/size.ts'
import type { BorePlan, FitPlan, Located, WrittenLength } from '../plan.ts'
import { fit } from '../schema/fit.ts'
import { id } from '../schema/id.ts'

/** The keys of what is bored: a diameter, or the pin that goes in and how it sits; and the depth. */
export const boredKeys = {
  diameter: optional(size),
  for: optional(id),
  fit: optional(fit),
  depth: optional(size),
}

export const boredInJson: JsonSchema = { anyOf: [{ required: ['diameter'] }, { required: ['for', 'fit'] }] }

type Written = {
  readonly diameter?: WrittenLength
  readonly for?: Located<string>
  readonly fit?: FitPlan
  readonly depth?: WrittenLength
}

/** How wide and how deep; `depth` is left out where the hole goes through. */
export type Bored = { readonly bore: BorePlan; readonly depth?: WrittenLength }

export function bored(written: Written, place: MappingPlace, within: string, fail: Fail): Bored | undefined {
  const bore = borePlan(written, place, within, fail)
  return bore && (written.depth ? { bore, depth: written.depth } : { bore })
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
