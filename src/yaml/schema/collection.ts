import { isLeaf, isList, isMapping, type List, placeOf, sourceOf, type TreeNode } from '../document/tree.ts'
import { limitPassed } from '../fault.ts'
import type { Located } from '../written.ts'
import { jsonSchemaOf } from './json-schema.ts'
import { wrongKind } from './leaf.ts'
import { type Fail, type Reader, reader, readWithin } from './reader.ts'

/** A list, at most so long. `check` sees the items as they stand, sound or not. */
export function list<T>(
  naming: { readonly name: string; readonly items: string; readonly most: number },
  item: Reader<T>,
  check: (items: List, fail: Fail) => void = () => {},
): Reader<readonly T[]> {
  const read = (node: TreeNode, fail: Fail) => {
    if (isLeaf(node) && node.reported) return undefined
    if (!isList(node)) return void fail(wrongKind(node, naming.name))
    if (node.length > naming.most) {
      return void fail(limitPassed(sourceOf(node), naming.items, node.length, naming.most))
    }
    const items = node.map(entry => readWithin(item, entry, fail))
    check(node, fail)
    const sound = items.filter(value => value !== undefined)
    return sound.length === items.length ? sound : undefined
  }
  return reader(naming.name, read, { type: 'array', items: jsonSchemaOf(item), maxItems: naming.most })
}

/** Things by name: each key is a name that the maker chose, `readName` says which are good. */
export function named<T>(
  naming: { readonly name: string; readonly items: string; readonly most: number },
  readName: (text: string, key: Located<string>['source'], fail: Fail) => Located<string> | undefined,
  item: Reader<T>,
): Reader<readonly (readonly [name: Located<string>, value: T])[]> {
  const read = (node: TreeNode, fail: Fail) => {
    if (isLeaf(node) && node.reported) return undefined
    if (!isMapping(node)) return void fail(wrongKind(node, naming.name))
    const { keys, source } = placeOf(node)
    if (keys.size > naming.most) return void fail(limitPassed(source, naming.items, keys.size, naming.most))
    const entries: (readonly [Located<string>, T])[] = []
    for (const [key, place] of keys) {
      const name = readName(key, place, fail)
      const value = readWithin(item, node[key], fail)
      if (name && value !== undefined) entries.push([name, value])
    }
    return entries.length === keys.size ? entries : undefined
  }
  return reader(naming.name, read, {
    type: 'object',
    additionalProperties: jsonSchemaOf(item),
    maxProperties: naming.most,
  })
}
