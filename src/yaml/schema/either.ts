import { isLeaf, isList } from '../document/tree.ts'
import { jsonSchemaOf } from './json-schema.ts'
import { type Reader, reader, readWithin } from './reader.ts'

/** A single value, or a group of keys or a list. */
export function either<A, B>(value: Reader<A>, group: Reader<B>): Reader<A | B> {
  return reader<A | B>(
    `${value.description}, or ${group.description}`,
    (node, fail) => readWithin<A | B>(isLeaf(node) ? value : group, node, fail),
    { anyOf: [jsonSchemaOf(value), jsonSchemaOf(group)] },
  )
}

/** A list, or a group of keys. */
export function listOrGroup<A, B>(list: Reader<A>, group: Reader<B>): Reader<A | B> {
  return reader<A | B>(
    `${list.description}, or ${group.description}`,
    (node, fail) => readWithin<A | B>(isList(node) || isLeaf(node) ? list : group, node, fail),
    { anyOf: [jsonSchemaOf(list), jsonSchemaOf(group)] },
  )
}
