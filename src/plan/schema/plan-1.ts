import { fault } from '../fault.ts'
import { maxNames, maxParts } from '../limits.ts'
import type { Plan } from '../plan.ts'
import { named } from './collection.ts'
import { readId } from './id.ts'
import { choice, leaf } from './leaf.ts'
import { readLetName } from './let-name.ts'
import { mapping } from './mapping.ts'
import { part } from './part.ts'
import { optional, type Reader } from './reader.ts'
import { size } from './size.ts'
import { stock } from './stock.ts'
import { label } from './text.ts'
import { usualPrecision } from './usual-precision.ts'

/** What the format version 1 holds, without the file's name. */
export const plan1: Reader<Omit<Plan, 'file'>> = mapping(
  { name: 'a plan', example: 'paperjig: 1', later: ['pins', 'joints'] },
  {
    paperjig: leaf('1', ({ source }) => source),
    title: label,
    units: choice('a unit', ['inch', 'mm']),
    precision: optional(size),
    let: optional(named({ name: 'named sizes', items: 'named sizes', most: maxNames }, readLetName, size)),
    stock: optional(named({ name: 'the stock', items: 'kinds of stock', most: maxParts }, readId, stock)),
    parts: named({ name: 'parts', items: 'parts', most: maxParts }, readId, part),
  },
  (
    { title, units, precision = usualPrecision(units), let: names = [], stock: rack = [], parts },
    { keys },
    fail,
  ) => {
    if (parts.length === 0) {
      return void fail(
        fault('nothing-in-it', keys.get('parts')!, { key: 'parts', wanted: 'one part at least' }),
      )
    }
    return (
      precision && {
        version: 1,
        title,
        units: units.value,
        precision,
        names: names.map(([name, length]) => ({ name, length })),
        stock: rack.map(([id, values]) => ({ id, ...values })),
        parts: parts.map(([id, values]) => ({ id, ...values })),
      }
    )
  },
)
