import { fault } from '../../yaml/fault.ts'
import { list } from '../../yaml/schema/collection.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { optional, type Reader } from '../../yaml/schema/reader.ts'
import { maxReferences } from '../limits.ts'
import type { JointPlan } from '../plan.ts'
import { fit } from './fit.ts'
import { id } from './id.ts'
import { reference } from './reference.ts'

const through = list({ name: 'a list of holes', items: 'holes in a joint', most: maxReferences }, reference)

/** `{ pin, through }`, or `{ tongue, into, fit }`. */
export const joint: Reader<JointPlan> = mapping(
  {
    name: 'a joint',
    example: 'pin: axle',
    json: { anyOf: [{ required: ['pin', 'through'] }, { required: ['tongue', 'into'] }] },
  },
  {
    pin: optional(id),
    through: optional(through),
    tongue: optional(reference),
    into: optional(reference),
    fit: optional(fit),
  },
  ({ pin, through, tongue, into, fit }, { keys, heading, source }, fail) => {
    const missing = (key: string, wanted: string) =>
      void fail(fault('missing-key', heading, { key, within: 'a joint', wanted }))
    if (pin) {
      const stray = ['tongue', 'into', 'fit'].find(key => keys.has(key))
      if (stray) return void fail(fault('not-both', keys.get(stray)!, { first: 'pin', second: stray }))
      if (!through) return missing('through', 'the holes that the pin goes through, in their order')
      if (through.length > 0) return { kind: 'pin', pin, through, source }
      const facts = { key: 'through', wanted: 'one hole at least' }
      return void fail(fault('nothing-in-it', keys.get('through')!, facts))
    }
    if (!tongue)
      return missing('pin', 'a pin with the holes it goes through, or a tongue with what it goes into')
    if (keys.has('through')) {
      return void fail(fault('not-both', keys.get('through')!, { first: 'tongue', second: 'through' }))
    }
    if (!into) return missing('into', 'the slot that the tongue goes into')
    return { kind: 'tongue', tongue, into, ...(fit ? { fit } : {}), source }
  },
)
