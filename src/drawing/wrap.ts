import type { Font } from '../text/font.ts'
import { layOut } from '../text/lay-out.ts'
import { fitText } from './fit-text.ts'

/** Text broken at blanks into lines no wider than `width` millimetres; a single word that is wider is cut short. */
export function wrap(
  text: string,
  font: Font,
  height: number,
  width: number,
  mostLines = 12,
): readonly string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ').filter(w => w !== '')) {
    const longer = line === '' ? word : `${line} ${word}`
    if (layOut(font, [longer], height).width <= width) {
      line = longer
      continue
    }
    if (lines.length === mostLines - 1 && line !== '') return [...lines, fitText(font, longer, height, width)]
    if (line !== '') lines.push(line)
    line = fitText(font, word, height, width)
  }
  return line === '' ? lines : [...lines, line]
}
