import { type FaceName, isSide, sayFace } from '../../finding/face-name.ts'
import { sourceOf } from '../../yaml/document/tree.ts'
import { fault } from '../../yaml/fault.ts'
import { list } from '../../yaml/schema/collection.ts'
import { either } from '../../yaml/schema/either.ts'
import { jsonSchemaOf } from '../../yaml/schema/json-schema.ts'
import { leaf } from '../../yaml/schema/leaf.ts'
import { type Fail, type Reader, reader, readWithin } from '../../yaml/schema/reader.ts'
import { faceDirections } from '../face-directions.ts'
import type { Located } from '../plan.ts'
import { readId } from './id.ts'

export type Faces = readonly [Located<FaceName>, ...Located<FaceName>[]]

/** A side, or what may be the name of an edge of the outline; whether there is such an edge, the model says. */
export const face: Reader<Located<FaceName>> = leaf('a side, or the name of an edge', (node, fail) => {
  const { text, source } = node
  if (isSide(text)) return { value: text, source }
  const id = readId(text, source, fail)
  return id && { value: `edge:${id.value}`, source }
})

const oneOrSeveral = either(
  face,
  list({ name: 'sides, such as [front, back]', items: 'sides of one cut', most: 6 }, face),
)

/** What a cut lies on: one face, or several that run between the same sides, such as `[front, back]`. */
export const faces: Reader<Faces> = reader(
  oneOrSeveral.description!,
  (node, fail) => {
    const read = readWithin(oneOrSeveral, node, fail)
    if (read === undefined) return undefined
    const [first, ...others] = 'value' in read ? [read] : read
    if (first === undefined) {
      const facts = { key: 'on', wanted: 'one side at least' }
      return void fail(fault('nothing-in-it', sourceOf(node), facts))
    }
    return others.every(other => alike(first, other, fail)) ? [first, ...others] : undefined
  },
  jsonSchemaOf(oneOrSeveral),
)

function alike(first: Located<FaceName>, other: Located<FaceName>, fail: Fail): boolean {
  if (first.value === other.value) {
    fail(fault('side-twice', other.source, { side: sayFace(other.value) }))
    return false
  }
  const [a, b] = [faceDirections(first.value), faceDirections(other.value)]
  if (a.along.join() === b.along.join() && a.across.join() === b.across.join()) return true
  fail(fault('faces-differ', other.source, { first: sayFace(first.value), second: sayFace(other.value) }))
  return false
}
