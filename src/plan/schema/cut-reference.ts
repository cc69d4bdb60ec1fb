import { excerpt } from '../../finding/visible.ts'
import { fault } from '../../yaml/fault.ts'
import { leaf } from '../../yaml/schema/leaf.ts'
import type { Reader } from '../../yaml/schema/reader.ts'
import type { Located } from '../plan.ts'

const pattern = /^[a-z][a-z0-9-]*(\.[1-9]\d{0,4})?$/

/** A cut of the same part: its name, of a row with the hole's number, `posts.3`. */
export const cutReference: Reader<Located<string>> = leaf('the name of a cut', ({ text, source }, fail) =>
  pattern.test(text)
    ? { value: text, source }
    : void fail(
        fault('wrong-kind', source, {
          found: 'a text',
          text: excerpt(text),
          wanted: 'the name of a cut of this part, such as pivot, or posts.3',
        }),
      ),
)
