import type { Finding } from '../../finding/finding.ts'
import type { Source } from '../../finding/source.ts'
import { excerpt } from '../../finding/visible.ts'
import { nearestName } from '../../length/nearest-name.ts'
import { colonWithoutSpace } from '../document/colon-without-space.ts'
import { isLeaf, isList, type Leaf, sourceOf, type TreeNode } from '../document/tree.ts'
import { fault } from '../fault.ts'
import type { Located } from '../written.ts'
import type { JsonSchema } from './json-schema.ts'
import { type Fail, type Reader, reader } from './reader.ts'

/** A reader of a single value. It is not asked about values that are empty or whose fault is known. */
export function leaf<T>(
  wanted: string,
  read: (leaf: Leaf, fail: Fail) => T | undefined,
  json: JsonSchema = { type: ['string', 'number'] },
): Reader<T> {
  const readLeaf = (node: TreeNode, fail: Fail) => {
    if (!isLeaf(node)) return void fail(wrongKind(node, wanted))
    if (node.reported) return undefined
    if (node.empty) return void fail(fault('missing-value', node.source, { wanted }))
    return read(node, fail)
  }
  return reader(wanted, readLeaf, json)
}

/** Something else than what belongs here. */
export function wrongKind(node: TreeNode, wanted: string): Finding {
  const source = sourceOf(node)
  if (!isLeaf(node)) {
    const found = isList(node) ? 'a list' : 'a group of keys'
    return fault('wrong-kind', source, { found, wanted })
  }
  const together = node.empty ? undefined : colonWithoutSpace(node.text)
  if (together) {
    const facts = { key: excerpt(together.key), value: excerpt(together.value) }
    return fault('colon-without-space', source, facts)
  }
  if (node.empty) return fault('missing-value', source, { wanted })
  return fault('wrong-kind', source, { found: 'a text', text: excerpt(node.text), wanted })
}

/** One of a few words; `same` are other spellings of them. */
export function choice<const T extends string>(of: string, words: readonly T[]): Reader<Located<T>> {
  const allowed = words.join(', ')
  const readWord = ({ text, source }: Leaf, fail: Fail): Located<T> | undefined => {
    const value = words.find(word => word === text)
    if (value !== undefined) return { value, source }
    const nearest = nearestName(text, words)
    const facts = { found: excerpt(text), of, allowed, ...(nearest === undefined ? {} : { nearest }) }
    return void fail(fault('not-a-choice', source, facts))
  }
  return leaf(`one of ${allowed}`, readWord, { enum: words })
}

/** `true` or `false`, as YAML 1.2 spells them. */
export const flag: Reader<Located<boolean>> = leaf(
  'true or false',
  ({ text, source }, fail) => {
    const word = text.toLowerCase()
    if (word === 'true' || word === 'false') return { value: word === 'true', source }
    const meant = { yes: 'true', on: 'true', no: 'false', off: 'false' }[word]
    const facts = { found: excerpt(text), of: 'yes or no', allowed: 'true, false' }
    return void fail(
      fault('not-a-choice', source, meant === undefined ? facts : { ...facts, nearest: meant }),
    )
  },
  { type: 'boolean' },
)

/** A whole number from 1 to `most`. */
export function count(most: number): Reader<Located<number>> {
  const wanted = `a whole number from 1 to ${most}`
  const readCount = ({ text, source }: Leaf, fail: Fail): Located<number> | undefined => {
    const value = countIn(text, most)
    if (value !== undefined) return { value, source }
    return void fail(fault('not-a-count', source, { found: excerpt(text), wanted }))
  }
  return leaf(wanted, readCount, { type: 'integer', minimum: 1, maximum: most })
}

export function countIn(text: string, most: number): number | undefined {
  const value = /^\d{1,9}$/.test(text) ? Number(text) : Number.NaN
  return value >= 1 && value <= most ? value : undefined
}

export function located<T>(value: T, source: Source): Located<T> {
  return { value, source }
}
