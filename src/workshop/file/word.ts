import { jsonSchemaOf } from '../../yaml/schema/json-schema.ts'
import { choice } from '../../yaml/schema/leaf.ts'
import { reader, readWithin } from '../../yaml/schema/reader.ts'
import type { Setting } from './setting.ts'

/** One of a few words. */
export function word<const T extends string>(of: string, words: readonly T[]): Setting<T> {
  const one = choice(of, words)
  return {
    reader: () =>
      reader(
        one.description ?? of,
        (node, fail) => {
          const found = readWithin(one, node, fail)
          return found && (() => found.value)
        },
        jsonSchemaOf(one),
      ),
    write: found => found,
  }
}
