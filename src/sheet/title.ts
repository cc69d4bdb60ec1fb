import { lettering } from '../drawing/lettering.ts'
import { textMark } from '../drawing/make-mark.ts'
import type { Mark } from '../drawing/mark.ts'
import { wrap } from '../drawing/wrap.ts'
import type { Point } from '../geometry/shape/point.ts'
import type { Fonts } from '../text/fonts.ts'

/** A title as it hangs from its upper left corner. */
export function titleMarks(
  words: string,
  at: Point,
  width: number,
  fonts: Fonts,
): { readonly marks: readonly Mark[]; readonly bottom: number } {
  const pitch = lettering.medium + 1.5
  const rows = wrap(words, fonts.bold, lettering.medium, width)
  return {
    marks: rows.map((row, i) =>
      textMark(
        { layer: 'text', subject: 'title' },
        [row],
        { x: at.x, y: at.y - lettering.medium - i * pitch },
        lettering.medium,
        { weight: 'bold' },
      ),
    ),
    bottom: at.y - rows.length * pitch - 0.5,
  }
}
