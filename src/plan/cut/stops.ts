import type { Source } from '../../finding/source.ts'
import { fault } from '../../yaml/fault.ts'
import { jsonSchemaOf } from '../../yaml/schema/json-schema.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { type Fail, optional, type Reader } from '../../yaml/schema/reader.ts'
import { size } from '../../yaml/schema/size.ts'
import type { Direction } from '../face-directions.ts'
import type { GroovePlan, WrittenLength } from '../plan.ts'

/** How far short of the ends: `{ left: 1/2, right: 3/4 }`. A plan's own words for sides may stand as keys, and no schema knows them. */
const stops: Reader<GroovePlan['stopped']> = mapping(
  { name: 'the stops', example: 'left: 1/2', json: { additionalProperties: jsonSchemaOf(size) } },
  {
    front: optional(size),
    back: optional(size),
    left: optional(size),
    right: optional(size),
    top: optional(size),
    bottom: optional(size),
    start: optional(size),
    end: optional(size),
  },
  (values, { keys }) =>
    Object.entries(values).map(([side, distance]) => {
      const name = side as GroovePlan['stopped'][0]['side']['value']
      return { side: { value: name, source: keys.get(side)! }, distance }
    }),
)

/** The keys of what runs along a face or an edge, from end to end unless it is stopped. */
export const runKeys = { stopped: optional(stops), length: optional(size) }

type Written = { readonly stopped?: GroovePlan['stopped']; readonly length?: WrittenLength }

/** The stops of what runs between two sides; `length` goes with the one stop it is measured from. */
export function runOf(
  { stopped = [], length }: Written,
  [near, far]: Direction,
  keys: ReadonlyMap<string, Source>,
  fail: Fail,
): Pick<GroovePlan, 'stopped' | 'length'> | undefined {
  const stray = stopped.find(({ side }) => side.value !== near && side.value !== far)
  if (stray) {
    const { value, source } = stray.side
    const wanted = `how far short of ${near} or ${far} it stops, such as stopped: { ${near}: 1/2 }`
    return void fail(fault('wrong-kind', source, { found: 'a side', text: value, wanted }))
  }
  if (!length) return { stopped }
  if (stopped.length === 1) return { stopped, length }
  const at = keys.get('length')!
  if (stopped.length === 2) return void fail(fault('not-both', at, { first: 'two stops', second: 'length' }))
  const wanted = `where the length begins, such as stopped: { ${near}: 1/2 }`
  return void fail(fault('missing-key', at, { key: 'stopped', within: 'a length', wanted }))
}
