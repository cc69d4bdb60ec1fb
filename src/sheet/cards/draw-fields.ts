import { fitText } from '../../drawing/fit-text.ts'
import { lettering } from '../../drawing/lettering.ts'
import { linesMark, textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Fonts } from '../../text/fonts.ts'
import type { Field } from './card.ts'

const belongs = { layer: 'text', subject: 'card' } as const
/** White between a rule and the letters beside it. */
export const inset = 1

/** A strip of places to write in, side by side: the small word in the upper corner, what is known on the lower rule. */
export function drawFields(box: Bounds, fields: readonly Field[], fonts: Fonts): readonly Mark[] {
  const all = fields.reduce((sum, { share }) => sum + share, 0)
  const width = box.right - box.left
  const marks: Mark[] = []
  let left = box.left
  for (const { label, share, text } of fields) {
    const right = left + (width * share) / all
    const room = right - left - 2 * inset
    marks.push(
      textMark(
        belongs,
        [fitText(fonts.regular, label, lettering.small, room)],
        { x: left + inset, y: box.top - inset - lettering.small + 0.4 },
        lettering.small,
      ),
    )
    if (text !== undefined) {
      const shown = fitText(fonts.bold, text, lettering.medium, room)
      marks.push(
        textMark(belongs, [shown], { x: left + inset, y: box.bottom + inset }, lettering.medium, {
          weight: 'bold',
        }),
      )
    }
    if (left > box.left) marks.push(upright(left, box))
    left = right
  }
  return marks
}

/** A rule from the top of a box to its bottom. */
export function upright(x: number, { top, bottom }: Bounds): Mark {
  return linesMark(belongs, 'thin', [
    [
      { x, y: bottom },
      { x, y: top },
    ],
  ])
}

/** A rule from the left of a box to its right. */
export function level(y: number, { left, right }: Bounds, role: 'thin' | 'wide' = 'thin'): Mark {
  return linesMark(belongs, role, [
    [
      { x: left, y },
      { x: right, y },
    ],
  ])
}
