import { codeOf } from '../../finding/visible.ts'

/**
 * Characters that no YAML text may hold: control characters but tab and line ends, lone halves of surrogate
 * pairs, the last two of the basic plane. A carriage return stands only before a line feed: YAML would let it
 * end a line by itself, editors disagree about it, and a line that only some programs see is a trap.
 *
 * Source: YAML 1.2.2, production 1, c-printable.
 */
const forbidden = /[^\t\n\r\x20-\x7E\x85\xA0-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]|\r(?!\n)/u

/** The first character that may not be there, with its code. */
export function firstForbidden(
  text: string,
): { readonly at: number; readonly character: string } | undefined {
  const found = forbidden.exec(text)
  return found ? { at: found.index, character: codeOf(found[0]) } : undefined
}
