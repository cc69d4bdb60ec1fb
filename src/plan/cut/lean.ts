import { type FaceName, sayFace } from '../../finding/face-name.ts'
import { sourceOf } from '../../yaml/document/tree.ts'
import { fault } from '../../yaml/fault.ts'
import { list } from '../../yaml/schema/collection.ts'
import { listOrGroup } from '../../yaml/schema/either.ts'
import { jsonSchemaOf } from '../../yaml/schema/json-schema.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { type Fail, type Reader, reader, readWithin } from '../../yaml/schema/reader.ts'
import { faceDirections } from '../face-directions.ts'
import type { LeanPlan } from '../plan.ts'
import { angle } from '../schema/angle.ts'
import { sideWord } from '../schema/side-word.ts'

const lean: Reader<LeanPlan> = mapping(
  { name: 'a lean', example: 'toward: right, angle: 8' },
  { toward: sideWord, angle },
  ({ toward, angle }, { source }) => ({ toward, angle, source }),
)

const oneOrTwo = listOrGroup(
  list({ name: 'a list of leans', items: 'leans of one hole', most: 2 }, lean),
  lean,
)

/** `{ toward: right, angle: 8 }`, or a list of two such, which are rake and splay. */
export const leans: Reader<readonly LeanPlan[]> = reader(
  'which way it leans, such as { toward: right, angle: 8 }, or a list of two such',
  (node, fail) => {
    const read = readWithin(oneOrTwo, node, fail)
    if (read === undefined) return undefined
    if ('toward' in read) return [read]
    if (read.length > 0) return read
    const facts = { key: 'lean', wanted: 'a side and an angle, such as { toward: right, angle: 8 }' }
    return void fail(fault('nothing-in-it', sourceOf(node), facts))
  },
  jsonSchemaOf(oneOrTwo),
)

/** Whether the leans are toward sides that the face runs to, and two of them in its two directions. */
export function leansFit([first, second]: readonly LeanPlan[], face: FaceName, fail: Fail): boolean {
  const { along, across } = faceDirections(face)
  for (const lean of [first, second]) {
    if (!lean || along.includes(lean.toward.value) || across.includes(lean.toward.value)) continue
    const { value, source } = lean.toward
    const facts = { found: value, on: sayFace(face), allowed: [...along, ...across].join(', ') }
    fail(fault('lean-off-face', source, facts))
    return false
  }
  if (!first || !second) return true
  const [a, b] = [first.toward.value, second.toward.value]
  if (along.includes(a) !== along.includes(b)) return true
  const other = along.includes(a) ? across : along
  const facts = { first: a, second: b, allowed: other.join(', ') }
  const alike = fault('leans-alike', second.toward.source, facts)
  fail({ ...alike, places: [...alike.places, { source: first.toward.source }] })
  return false
}
