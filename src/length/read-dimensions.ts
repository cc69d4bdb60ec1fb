import { faultAt, type Read, read, refused } from './fault.ts'
import { readSize } from './read-size.ts'
import type { WrittenSize } from './written-size.ts'

/** Three of the longest sizes, in UTF-16 units. */
const longestText = 3000

const wantedCount = '2 or 3 sizes with x between them, such as 6 x 1 1/2 x 3/4'

/** One size of several, with the offsets of its own characters in the whole text. */
export type PlacedSize = { readonly size: WrittenSize; readonly from: number; readonly to: number }

/**
 * Reads two or three sizes with ` x ` or ` × ` between them: `6 7/8 x 1 5/16 x board`. A × inside brackets
 * multiplies. A `~` belongs to the size that it stands before, and to no other.
 *
 * The offsets inside each `size` are those in its own characters; a fault's are those in `text`.
 */
export function readDimensions(text: string): Read<readonly PlacedSize[]> {
  const whole = { from: 0, to: text.length }
  if (text.length > longestText) return refused(faultAt(text, whole, 'too-long', 'two or three sizes'))
  const found = pieces(text)
  if (found.length > 3) return refused(faultAt(text, whole, 'dimension-count', wantedCount))

  const dimensions: PlacedSize[] = []
  for (const { from, to } of found) {
    const size = readSize(text.slice(from, to))
    if (!size.ok) {
      const { fault } = size
      return refused({ ...fault, from: fault.from + from, to: fault.to + from })
    }
    dimensions.push({ size: size.value, from, to })
  }
  if (dimensions.length < 2) return refused(faultAt(text, whole, 'dimension-count', wantedCount))
  return read(dimensions)
}

/** The stretches between separators, without the spaces round them. */
function pieces(text: string): readonly { readonly from: number; readonly to: number }[] {
  const found: { from: number; to: number }[] = []
  const separatorOrBracket = /[()]|(?<=\s|^)[xX×](?=\s|$)/gu
  let depth = 0
  let from = 0
  for (const match of text.matchAll(separatorOrBracket)) {
    if (match[0] === '(') depth += 1
    else if (match[0] === ')') depth -= 1
    else if (depth <= 0) {
      found.push(trimmed(text, from, match.index))
      from = match.index + 1
    }
  }
  found.push(trimmed(text, from, text.length))
  return found
}

function trimmed(text: string, from: number, to: number): { from: number; to: number } {
  const piece = text.slice(from, to)
  const start = from + piece.length - piece.trimStart().length
  return { from: start, to: Math.max(start, from + piece.trimEnd().length) }
}
