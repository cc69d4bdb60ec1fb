import type { Font } from '../text/font.ts'
import { measureLine } from '../text/lay-out.ts'
import type { StackedFraction, Words } from '../text/words.ts'

/**
 * Words with fractions broken at blanks into lines no wider than `width` millimetres where they can be. A name that is
 * wider is broken after its hyphens; what has neither in it stays in one line.
 */
export function wrapWords(words: Words, font: Font, height: number, width: number): readonly Words[] {
  const isWider = (line: Words): boolean => measureLine(font, line, height).width > width
  if (!isWider(words)) return [words]
  const lines: Words[] = []
  for (const chunk of chunksOf(words)) {
    const pieces = isWider(chunk) ? piecesOf(chunk) : [chunk]
    pieces.forEach((piece, i) => {
      const before = lines.at(-1)
      const longer: Words = before === undefined ? piece : [...before, ...(i === 0 ? [' '] : []), ...piece]
      if (before !== undefined && !isWider(longer)) lines[lines.length - 1] = longer
      else lines.push(piece)
    })
  }
  return lines
}

/** What stands between blanks: a fraction belongs to the letters that touch it. */
export function chunksOf(words: Words): readonly Words[] {
  const chunks: (string | StackedFraction)[][] = [[]]
  for (const word of words) {
    if (typeof word !== 'string') {
      chunks.at(-1)!.push(word)
      continue
    }
    const [first = '', ...others] = word.split(' ')
    if (first !== '') chunks.at(-1)!.push(first)
    for (const other of others) chunks.push(other === '' ? [] : [other])
  }
  return chunks.filter(chunk => chunk.length > 0)
}

/** What stood between blanks, in one line again. */
export function inOneLine(chunks: readonly Words[]): Words {
  return chunks.flatMap((chunk, i) => (i === 0 ? chunk : [' ', ...chunk]))
}

/** A long name as it may be broken: after each hyphen. */
function piecesOf(chunk: Words): readonly Words[] {
  if (!chunk.every(word => typeof word === 'string')) return [chunk]
  return chunk
    .join('')
    .split(/(?<=-)/)
    .map(piece => [piece])
}
