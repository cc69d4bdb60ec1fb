import { lettering } from '../drawing/lettering.ts'
import { textMark } from '../drawing/make-mark.ts'
import type { Mark } from '../drawing/mark.ts'
import { wrap } from '../drawing/wrap.ts'
import type { Bounds } from '../geometry/shape/contour.ts'
import type { Point } from '../geometry/shape/point.ts'
import type { Fonts } from '../text/fonts.ts'

/** A title as it hangs from its upper left corner; each of its sentences begins a line. */
export function titleMarks(
  sentences: readonly string[],
  at: Point,
  width: number,
  fonts: Fonts,
): { readonly marks: readonly Mark[]; readonly bottom: number } {
  const pitch = lettering.medium + 1.5
  const rows = sentences.flatMap(words => wrap(words, fonts.bold, lettering.medium, width))
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

/** A title under a drawing, as broad as that is. */
export function titleUnder(sentences: readonly string[], box: Bounds, fonts: Fonts): readonly Mark[] {
  const at = { x: box.left, y: box.bottom - titleAside }
  return titleMarks(sentences, at, Math.max(box.right - box.left, narrowTitle), fonts).marks
}

/** White between a drawing and a title under it. */
const titleAside = 1.5
/** A title is broken where it is longer than the drawing is broad, but not into a column narrower than this. */
const narrowTitle = 40
