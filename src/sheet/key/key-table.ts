import { lettering, lineSpacing } from '../../drawing/lettering.ts'
import { textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Fonts } from '../../text/fonts.ts'
import { layOut } from '../../text/lay-out.ts'
import type { Words } from '../../text/words.ts'
import { wrap } from './wrap.ts'

/** One line of the key: a letter where there is one, what it means, and below it in smaller letters which cuts bear it. */
export type KeyLine = { readonly letter?: string; readonly words: Words; readonly names?: string }

const belongs = { layer: 'text', subject: 'key' } as const
/** From a letter to its words. */
const letterColumn = 8

/** The key as it hangs from its upper left corner `at`, no wider than `width` where words can be broken. Returns its lower edge. */
export function keyTable(
  lines: readonly KeyLine[],
  at: Point,
  width: number,
  fonts: Fonts,
): { readonly marks: readonly Mark[]; readonly bottom: number } {
  const marks: Mark[] = []
  let y = at.y
  const write = (words: Words, x: number, height: number, weight: 'regular' | 'bold'): void => {
    y -= layOut(fonts[weight], words, height).ascent
    marks.push(textMark(belongs, words, { x, y }, height, { weight }))
    y -= layOut(fonts[weight], words, height).descent + height * (lineSpacing - 1) * 0.35
  }
  for (const { letter, words, names } of lines) {
    const x = letter === undefined ? at.x : at.x + letterColumn
    const before = y
    write(words, x, letter === undefined ? lettering.medium : lettering.large, 'regular')
    if (letter !== undefined) {
      marks.push(
        textMark(
          belongs,
          [letter],
          { x: at.x, y: before - layOut(fonts.regular, words, lettering.large).ascent },
          lettering.large,
          { weight: 'bold' },
        ),
      )
    }
    for (const row of wrap(names ?? '', fonts.regular, lettering.medium, width - (x - at.x))) {
      write([row], x, lettering.medium, 'regular')
    }
    y -= lettering.medium * 0.4
  }
  return { marks, bottom: y }
}
