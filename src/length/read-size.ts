import { faultAt, type Read, read, refused } from './fault.ts'
import { parse } from './parse.ts'
import type { WrittenSize } from './written-size.ts'

/** The longest text that is looked at, in UTF-16 units: ten times what any formula needs. */
const longestText = 1000

/**
 * Reads a size as it stands in a plan: `3`, `2 1/2`, `1-3/16`, `5/8"`, `12.5 mm`, `1' 4 1/2"`, `gauge / 2 + 1/16`,
 * each with a `~` before it where it was scaled off the drawing, or `unknown`. Nothing is calculated yet.
 *
 * Offsets in the result and in a fault are those in `text`.
 */
export function readSize(text: string): Read<WrittenSize> {
  if (text.length > longestText) {
    const wanted = `a size of at most ${longestText} letters`
    return refused(faultAt(text, { from: 0, to: text.length }, 'too-long', wanted))
  }
  const spaces = text.length - text.trimStart().length
  const scaled = text.charAt(spaces) === '~'
  // what stands before the formula becomes spaces, so that offsets stay those of the text
  const formula = scaled ? `${' '.repeat(spaces + 1)}${text.slice(spaces + 1)}` : text
  if (formula.trim() === '') {
    return refused(faultAt(text, { from: 0, to: text.length }, 'empty', 'a size, such as 2 1/2, or unknown'))
  }
  if (!scaled && text.trim() === 'unknown') return read({ kind: 'unknown', written: text })
  const expression = parse(formula)
  return expression.ok
    ? read({ kind: 'size', written: text, scaled, expression: expression.value })
    : expression
}
