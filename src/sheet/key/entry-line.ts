import type { Model } from '../../model/part.ts'
import type { KeyEntry } from './key-entry.ts'
import type { KeyLine } from './key-table.ts'
import { type EntryContext, entryWords, memberNames, setUpWords } from './key-words.ts'

/** A letter with what it stands for, as a line of the key. */
export function entryLine(entry: KeyEntry, model: Model, context: EntryContext): KeyLine {
  const setUp = setUpWords(entry, context.name)
  return {
    kind: 'entry',
    letter: entry.letter,
    words: entryWords(entry, model, context),
    ...(setUp === undefined ? {} : { setUp }),
    names: memberNames(entry),
  }
}
