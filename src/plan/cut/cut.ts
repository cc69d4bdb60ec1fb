import { excerpt } from '../../finding/visible.ts'
import { nearestName } from '../../length/nearest-name.ts'
import { isLeaf, isMapping, type Mapping, placeOf } from '../../yaml/document/tree.ts'
import { fault } from '../../yaml/fault.ts'
import { jsonSchemaOf } from '../../yaml/schema/json-schema.ts'
import { wrongKind } from '../../yaml/schema/leaf.ts'
import { type Fail, type Reader, reader, readWithin } from '../../yaml/schema/reader.ts'
import type { CutPlan } from '../plan.ts'
import { cutKinds } from './cut-kinds.ts'

const kinds = Object.keys(cutKinds) as CutPlan['kind'][]

/** A cut of any kind; the key that names it says which. */
export const cut: Reader<CutPlan> = reader(
  'a cut',
  (node, fail) => {
    if (isLeaf(node) && node.reported) return undefined
    if (!isMapping(node)) return void fail(wrongKind(node, 'a cut, such as - hole: front-axle'))
    const kind = kindOf(node, fail)
    return kind && readWithin<CutPlan>(cutKinds[kind], node, fail)
  },
  { anyOf: Object.values(cutKinds).map(jsonSchemaOf) },
)

function kindOf(node: Mapping, fail: Fail): CutPlan['kind'] | undefined {
  const { keys, heading } = placeOf(node)
  const [first, second] = kinds.filter(kind => keys.has(kind))
  if (first && second) {
    const both = fault('two-cut-kinds', keys.get(second)!, { first, second })
    return void fail({ ...both, places: [...both.places, { source: keys.get(first)! }] })
  }
  if (first) return first
  for (const [key, source] of keys) {
    const nearest = nearestName(key, kinds)
    if (nearest === undefined) continue
    const facts = { found: excerpt(key), within: 'the cuts', nearest, allowed: kinds.join(', ') }
    return void fail(fault('unknown-key', source, facts))
  }
  return void fail(fault('cut-kind-missing', heading, { allowed: kinds.join(', ') }))
}
