import type { DistanceFrom } from '../../finding/face-name.ts'
import { sides } from '../../finding/side.ts'
import { choice } from '../../yaml/schema/leaf.ts'
import { type Reader, reader, readWithin } from '../../yaml/schema/reader.ts'
import type { Located } from '../../yaml/written.ts'

const word = choice('a side', [...sides, 'start', 'end'])

/** A side, or an end of a named edge. For an editor it is any word, since a plan may have its own for the sides. */
export const sideWord: Reader<Located<DistanceFrom>> = reader(
  word.description!,
  (node, fail) => readWithin(word, node, fail),
  { type: 'string' },
)
