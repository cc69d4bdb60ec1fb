import { either } from '../../yaml/schema/either.ts'
import { choice, leaf } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { type Fail, optional, type Reader, readWithin } from '../../yaml/schema/reader.ts'
import type { Located } from '../plan.ts'

type Ends = readonly Located<'left' | 'right'>[]

const end = choice('how an end is made', ['round'])

const both: Reader<Ends> = leaf(
  'round, for both ends',
  (node, fail: Fail) => {
    const read = readWithin(end, node, fail)
    return read && (['left', 'right'] as const).map(value => ({ value, source: read.source }))
  },
  { const: 'round' },
)

const byName: Reader<Ends> = mapping(
  { name: 'the ends', example: 'left: round' },
  { left: optional(end), right: optional(end) },
  ({ left, right }) => [
    ...(left ? [{ value: 'left' as const, source: left.source }] : []),
    ...(right ? [{ value: 'right' as const, source: right.source }] : []),
  ],
)

/** `round` for both ends of a part, or `{ left: round }` for one of them. */
export const roundEnds: Reader<Ends> = either(both, byName)
