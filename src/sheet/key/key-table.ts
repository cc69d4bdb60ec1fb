import { lettering } from '../../drawing/lettering.ts'
import { textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { wrap } from '../../drawing/wrap.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Fonts } from '../../text/fonts.ts'
import { layOut } from '../../text/lay-out.ts'
import type { Words } from '../../text/words.ts'

/** A line of the key: a letter, what it means, and below it in smaller letters which cuts bear it; or a remark. */
export type KeyLine =
  | { readonly kind: 'entry'; readonly letter: string; readonly words: Words; readonly names: string }
  | { readonly kind: 'size'; readonly words: Words }
  | { readonly kind: 'remark'; readonly text: string }

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
  /** Writes a line below the last one; returns its base line. */
  const write = (words: Words, x: number, height: number): number => {
    const { ascent, descent } = layOut(fonts.regular, words, height)
    const base = y - ascent
    marks.push(textMark(belongs, words, { x, y: base }, height))
    y = base - descent - leading
    return base
  }
  const writeWrapped = (text: string, x: number): void => {
    for (const row of wrap(text, fonts.regular, lettering.medium, width - (x - at.x)))
      write([row], x, lettering.medium)
  }
  for (const line of lines) {
    switch (line.kind) {
      case 'entry': {
        const base = write(line.words, at.x + letterColumn, lettering.large)
        marks.push(
          textMark(belongs, [line.letter], { x: at.x, y: base }, lettering.large, { weight: 'bold' }),
        )
        writeWrapped(line.names, at.x + letterColumn)
        break
      }
      case 'size':
        write(line.words, at.x, lettering.large)
        break
      case 'remark':
        writeWrapped(line.text, at.x)
        break
    }
    y -= leading
  }
  return { marks, bottom: y }
}

/** White between lines, besides the room that tails and fractions take. */
const leading = 0.8
