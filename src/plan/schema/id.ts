import type { Source } from '../../finding/source.ts'
import { excerpt } from '../../finding/visible.ts'
import { fault, limitPassed } from '../../yaml/fault.ts'
import { leaf } from '../../yaml/schema/leaf.ts'
import type { Fail, Reader } from '../../yaml/schema/reader.ts'
import { maxIdLength } from '../limits.ts'
import type { Located } from '../plan.ts'

const idPattern = /^[a-z][a-z0-9-]*$/

/** An id: a small letter, then small letters, digits and hyphens. */
export const id: Reader<Located<string>> = leaf(
  'a name of small letters, digits and hyphens',
  (node, fail) => readId(node.text, node.source, fail),
  { type: 'string', pattern: idPattern.source, maxLength: maxIdLength },
)

export function readId(text: string, source: Source, fail: Fail): Located<string> | undefined {
  if (text.length > maxIdLength) {
    return void fail(limitPassed(source, 'characters in a name', text.length, maxIdLength))
  }
  if (idPattern.test(text)) return { value: text, source }
  const nearest = idLike(text)
  const found = excerpt(text)
  return void fail(fault('not-an-id', source, nearest === undefined ? { found } : { found, nearest }))
}

/** The id that a text would make: `Side Frame` becomes `side-frame`. */
function idLike(text: string): string | undefined {
  const like = text
    .normalize('NFD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^[-0-9]+|-+$/g, '')
  return idPattern.test(like) ? like : undefined
}
