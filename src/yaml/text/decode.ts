import type { Finding } from '../../finding/finding.ts'
import { fault, limitPassed } from '../fault.ts'
import { maxBytes } from '../limits.ts'
import { firstForbidden } from './forbidden-character.ts'
import { firstInvalid, lenientText } from './utf-8.ts'

/** The text of a file, in which all offsets count, and what is wrong with it as a text. */
export type DecodedText = { readonly text: string; readonly findings: readonly Finding[] }

/**
 * A file as text: UTF-8 with or without a byte order mark, within the size limit, without characters that YAML
 * forbids. A text that comes as a string is held to the same; a text over the limit is given back empty.
 */
export function decode(input: string | Uint8Array, file: string): DecodedText {
  if (input.length > maxBytes) {
    const start = { file, from: 0, to: 0 }
    return { text: '', findings: [limitPassed(start, 'bytes in a file', input.length, maxBytes, 'byte')] }
  }
  const text = typeof input === 'string' ? input : lenientText(input)
  const invalid = typeof input === 'string' ? undefined : firstInvalid(input, text)
  if (invalid) {
    const byte = `0x${invalid.byte.toString(16).toUpperCase().padStart(2, '0')}`
    return { text, findings: [fault('not-utf-8', { file, from: invalid.at, to: invalid.at + 1 }, { byte })] }
  }
  const forbidden = firstForbidden(text)
  if (!forbidden) return { text, findings: [] }
  const { at, character } = forbidden
  return { text, findings: [fault('forbidden-character', { file, from: at, to: at + 1 }, { character })] }
}
