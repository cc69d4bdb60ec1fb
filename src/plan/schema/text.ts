import { codeOf } from '../../finding/visible.ts'
import { type Leaf, placeWithin } from '../../yaml/document/tree.ts'
import { fault, limitPassed } from '../../yaml/fault.ts'
import { leaf } from '../../yaml/schema/leaf.ts'
import type { Fail, Reader } from '../../yaml/schema/reader.ts'
import { maxLabelLength, maxNoteLength } from '../limits.ts'
import type { Located } from '../plan.ts'

/**
 * Escapes in a quoted text can bring in what the file itself may not hold: control characters but the line feed,
 * and lone halves of surrogate pairs.
 */
const unprintable = /[^\P{Cc}\n]|\p{Cs}/u

/** A text of one line; line breaks and runs of spaces become one space. */
export const label = text('a text', maxLabelLength, written => written.replace(/\s+/g, ' ').trim())

/** A text of one or more lines. */
export const note = text('a text', maxNoteLength, written => written.trim())

function text(wanted: string, longest: number, tidy: (written: string) => string): Reader<Located<string>> {
  const readText = (node: Leaf, fail: Fail): Located<string> | undefined => {
    const { source } = node
    if (node.text.length > longest) {
      return void fail(limitPassed(source, 'characters in this text', node.text.length, longest))
    }
    const bad = unprintable.exec(node.text)
    if (bad) {
      const place = placeWithin(node, bad.index, bad.index + 1)
      return void fail(fault('forbidden-character', place, { character: codeOf(bad[0]) }))
    }
    const value = tidy(node.text)
    if (value === '') return void fail(fault('missing-value', source, { wanted }))
    return { value, source }
  }
  return leaf(wanted, readText, { type: ['string', 'number', 'boolean'] })
}
