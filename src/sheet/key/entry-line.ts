import type { Model } from '../../model/part.ts'
import type { KeyEntry } from './key-entry.ts'
import type { KeyLine } from './key-table.ts'
import { entryWords, memberNames } from './key-words.ts'

/** A letter with what it stands for, as a line of the key. */
export function entryLine(entry: KeyEntry, model: Model): KeyLine {
  return { kind: 'entry', letter: entry.letter, words: entryWords(entry, model), names: memberNames(entry) }
}
