import { isLeaf } from '../yaml/tree.ts'
import { type Reader, reader, readWithin } from './reader.ts'

/** A single value, or a group of keys. */
export function either<A, B>(value: Reader<A>, group: Reader<B>): Reader<A | B> {
  return reader<A | B>(`${value.description}, or ${group.description}`, (node, fail) =>
    readWithin<A | B>(isLeaf(node) ? value : group, node, fail),
  )
}
