import type { TextFacts } from '../reading-facts.ts'
import type { Sentences } from './wording.ts'

export const textSentences: Sentences<keyof TextFacts> = {
  'not-utf-8': ({ facts }) => `the byte ${facts.byte} is not UTF-8 text; save it as plain text in UTF-8`,
  'forbidden-character': ({ facts }) =>
    facts.character === 'U+000D'
      ? 'a carriage return stands here without a line feed; save the file with ordinary line ends'
      : `the character ${facts.character} cannot be seen and may not stand here; delete it`,
  'limit-passed': ({ facts, measured, limit }, { amount }) =>
    `${amount(measured)} ${facts.of} are more than is read: at most ${amount(limit)}`,
  'findings-left-out': () => 'there is more from here on; mend what stands above and try again',
  'empty-plan': () => 'there is nothing in this file; a plan begins with paperjig: 1',
}
