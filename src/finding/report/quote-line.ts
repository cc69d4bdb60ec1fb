import { lineAround, locate } from '../locate.ts'
import type { Source } from '../source.ts'
import { visible } from '../visible.ts'

/** As much of a line as a report shows, in characters; of a longer one the stretch around the place. */
const longestLine = 100

/** How much of it stands before the place at the most. */
const mostBefore = 60

/** A line of a text with a place in it, ready to print one above the other in letters of one width. */
export type QuotedLine = { readonly number: number; readonly text: string; readonly caret: string }

/** The line that a source begins in, and carets under the source as far as it lies in that line. */
export function quoteLine(text: string, source: Source): QuotedLine {
  const line = lineAround(text, source.from)
  const start = wholeCharacter(line.text, Math.max(0, Math.min(source.from, text.length) - line.from))
  const end = wholeCharacter(line.text, Math.max(start, Math.min(source.to - line.from, line.text.length)))
  const first = start > mostBefore ? wholeCharacter(line.text, start - mostBefore) : 0
  const last = wholeCharacter(line.text, Math.min(line.text.length, first + longestLine))
  const before = (first > 0 ? '…' : '') + shown(line.text.slice(first, start))
  const marked = shown(line.text.slice(start, Math.min(end, last)))
  const after = shown(line.text.slice(Math.min(end, last), last)) + (last < line.text.length ? '…' : '')
  return {
    number: locate(text, source.from).line,
    text: `${before}${marked}${after}`.trimEnd(),
    caret: ' '.repeat(columns(before)) + '^'.repeat(Math.max(1, columns(marked.trimEnd()))),
  }
}

/** Not between the two halves of a character outside the basic plane. */
function wholeCharacter(text: string, at: number): number {
  return /[\uDC00-\uDFFF]/.test(text.charAt(at)) ? at + 1 : at
}

function shown(text: string): string {
  return visible(text.replaceAll('\t', '  ').replaceAll('\uFEFF', ''))
}

/**
 * How many columns a text takes on a terminal: none for a mark that sits on the letter before it, two for the
 * wide letters of East Asia and for emoji. Near enough to put a caret under a word.
 *
 * Source: Unicode Standard Annex 11, East Asian Width, its wide and full-width blocks.
 */
function columns(text: string): number {
  let count = 0
  for (const character of text) count += /\p{M}/u.test(character) ? 0 : wide.test(character) ? 2 : 1
  return count
}

const wide =
  /[\u1100-\u115F\u2E80-\uA4CF\uAC00-\uD7A3\uF900-\uFAFF\uFE30-\uFE6F\uFF00-\uFF60\uFFE0-\uFFE6]|\p{Emoji_Presentation}/u
