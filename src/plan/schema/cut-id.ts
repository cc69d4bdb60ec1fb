import { isLeaf } from '../../yaml/document/tree.ts'
import { leaf } from '../../yaml/schema/leaf.ts'
import { type Reader, reader, readWithin } from '../../yaml/schema/reader.ts'
import type { Located } from '../plan.ts'
import { readId } from './id.ts'

const given = leaf('a name of small letters, digits and hyphens, or nothing', ({ text, source }, fail) =>
  readId(text, source, fail),
)

/** The name of a cut. Where nothing refers to the cut it may be left out; it is empty then, and the part numbers it. */
export const cutId: Reader<Located<string>> = reader(
  given.description!,
  (node, fail) =>
    isLeaf(node) && node.empty && !node.reported
      ? { value: '', source: node.source }
      : readWithin(given, node, fail),
  { type: ['string', 'null'], pattern: '^[a-z][a-z0-9-]*$' },
)
