import type { Source } from '../../finding/source.ts'
import { excerpt } from '../../finding/visible.ts'
import { readName } from '../../length/read-name.ts'
import { fault } from '../../yaml/fault.ts'
import type { Fail } from '../../yaml/schema/reader.ts'
import type { Located } from '../plan.ts'

/** What a part's own sizes are called in its formulas, and what stands for the middle in a position. */
const ownNames: Readonly<Record<string, string>> = {
  length: "the part's own length",
  width: "the part's own width",
  thickness: "the part's own thickness",
  center: 'the middle',
  centre: 'the middle',
}

/** The name of a size in `let`. */
export function readLetName(text: string, source: Source, fail: Fail): Located<string> | undefined {
  const read = readName(text)
  const found = excerpt(text)
  if (!read.ok && read.fault.code === 'reserved-name') {
    return void fail(fault('reserved-name', source, { name: found, means: 'something else in a formula' }))
  }
  if (!read.ok) {
    const like = text.replace(/[^\p{L}0-9_]+/gu, '_').replace(/^[0-9_]+|_+$/g, '')
    const facts = { found, wanted: read.fault.wanted }
    return void fail(fault('not-a-name', source, readName(like).ok ? { ...facts, nearest: like } : facts))
  }
  const means = Object.hasOwn(ownNames, text) ? ownNames[text] : undefined
  if (means !== undefined) return void fail(fault('reserved-name', source, { name: found, means }))
  return { value: text, source }
}
