import type { Font } from '../text/font.ts'
import { textWidth } from '../text/lay-out.ts'
import { fitText } from './fit-text.ts'

/** Text broken at blanks into lines no wider than `width` millimetres; a single word that is wider is cut short. */
export function wrap(
  text: string,
  font: Font,
  height: number,
  width: number,
  mostLines = 12,
): readonly string[] {
  // letters stand side by side without kerning, so widths add up
  const widthOf = (piece: string): number => textWidth(font, piece, height)
  const blank = widthOf(' ')
  const lines: string[] = []
  let line = ''
  let reached = 0
  for (const word of text.split(' ').filter(w => w !== '')) {
    const alone = widthOf(word)
    const longer = line === '' ? alone : reached + blank + alone
    if (longer <= width) {
      line = line === '' ? word : `${line} ${word}`
      reached = longer
      continue
    }
    if (lines.length === mostLines - 1 && line !== '')
      return [...lines, fitText(font, `${line} ${word}`, height, width)]
    if (line !== '') lines.push(line)
    line = fitText(font, word, height, width)
    reached = Math.min(alone, width)
  }
  return line === '' ? lines : [...lines, line]
}
