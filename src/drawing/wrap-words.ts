import type { Font } from '../text/font.ts'
import { measureLine } from '../text/lay-out.ts'
import type { StackedFraction, Words } from '../text/words.ts'

/**
 * Words with fractions broken at blanks into lines no wider than `width` millimetres where they can be; what has no
 * blank in it stays in one line.
 */
export function wrapWords(words: Words, font: Font, height: number, width: number): readonly Words[] {
  if (measureLine(font, words, height).width <= width) return [words]
  const lines: Words[] = []
  for (const chunk of chunksOf(words)) {
    const before = lines.at(-1)
    const longer: Words = before === undefined ? chunk : [...before, ' ', ...chunk]
    if (before !== undefined && measureLine(font, longer, height).width <= width)
      lines[lines.length - 1] = longer
    else lines.push(chunk)
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
