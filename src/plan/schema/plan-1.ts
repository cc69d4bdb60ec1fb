import { fault } from '../../yaml/fault.ts'
import { list, named } from '../../yaml/schema/collection.ts'
import { either } from '../../yaml/schema/either.ts'
import { choice, leaf } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { optional, type Reader } from '../../yaml/schema/reader.ts'
import { size } from '../../yaml/schema/size.ts'
import { maxConfirmed, maxJoints, maxNames, maxParts } from '../limits.ts'
import { transferNames } from '../part-plan.ts'
import type { PartPlan, Plan } from '../plan.ts'
import { confirmed } from './confirmed.ts'
import { readId } from './id.ts'
import { joint } from './joint.ts'
import { readLetName } from './let-name.ts'
import { part } from './part.ts'
import { pin } from './pin.ts'
import { resolved, shortPart } from './short-part.ts'
import { stock } from './stock.ts'
import { label } from './text.ts'
import { usualPrecision } from './usual-precision.ts'

/** What the format version 1 holds, without the file's name. */
export const plan1: Reader<Omit<Plan, 'file'>> = mapping(
  { name: 'a plan', example: 'paperjig: 1' },
  {
    paperjig: leaf('1', ({ source }) => source, { const: 1 }),
    title: label,
    units: choice('a unit', ['inch', 'mm']),
    precision: optional(size),
    transfer: optional(choice('a way from paper to wood', transferNames)),
    projection: optional(choice('a way to set out views', ['third', 'first'])),
    let: optional(named({ name: 'named sizes', items: 'named sizes', most: maxNames }, readLetName, size)),
    stock: optional(named({ name: 'the stock', items: 'kinds of stock', most: maxParts }, readId, stock)),
    pins: optional(named({ name: 'the pins', items: 'kinds of pin', most: maxParts }, readId, pin)),
    parts: named({ name: 'parts', items: 'parts', most: maxParts }, readId, either(shortPart, part)),
    joints: optional(list({ name: 'a list of joints', items: 'joints', most: maxJoints }, joint)),
    confirmed: optional(
      list({ name: 'a list of names', items: 'confirmed names', most: maxConfirmed }, confirmed),
    ),
  },
  (values, { keys }, fail) => {
    const { title, units, precision = usualPrecision(units), transfer, projection } = values
    const { let: names = [], stock: rack = [], pins = [], joints = [], confirmed = [] } = values
    if (values.parts.length === 0) {
      return void fail(
        fault('nothing-in-it', keys.get('parts')!, { key: 'parts', wanted: 'one part at least' }),
      )
    }
    const stockNames = new Set(rack.map(([id]) => id.value))
    const parts = values.parts.flatMap(([id, written]): readonly PartPlan[] => {
      const whole = 'part' in written ? resolved(written, name => stockNames.has(name), fail) : written
      return whole ? [{ id, ...whole }] : []
    })
    if (!precision || parts.length < values.parts.length) return undefined
    return {
      version: 1,
      title,
      units: units.value,
      precision,
      ...(transfer ? { transfer } : {}),
      ...(projection ? { projection } : {}),
      names: names.map(([name, length]) => ({ name, length })),
      stock: rack.map(([id, values]) => ({ id, ...values })),
      pins: pins.map(([id, values]) => ({ id, ...values })),
      parts,
      joints,
      confirmed,
    }
  },
)
