import { lettering } from '../../drawing/lettering.ts'
import { linesMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Fonts } from '../../text/fonts.ts'
import type { Field } from './card.ts'
import { downToLast, fittedMarks, fitWords, smallPitch } from './fit-words.ts'
import { inset, layOutFields } from './lay-out-fields.ts'

const belongs = { layer: 'text', subject: 'card' } as const
/** A strip of places to write in, side by side: the small word in the upper corner, what is known on the lower rule. */
export function drawFields(box: Bounds, fields: readonly Field[], fonts: Fonts): readonly Mark[] {
  const { widths, labels, more } = layOutFields(fields, box.right - box.left, fonts)
  const most = linesBelowLabel(box, more)
  const marks: Mark[] = []
  let left = box.left
  for (const [i, { text }] of fields.entries()) {
    const right = left + widths[i]!
    const room = right - left - 2 * inset
    const label = labels[i]!
    const x = left + inset
    marks.push(...fittedMarks(label, { x, y: box.top - labelBase - downToLast(label) }, belongs))
    if (text !== undefined) {
      const shown = fitWords([text], { height: lettering.medium, width: room, most, weight: 'bold' }, fonts)
      marks.push(...fittedMarks(shown, { x, y: box.bottom + inset }, belongs))
    }
    if (left > box.left) marks.push(upright(left, box))
    left = right
  }
  return marks
}

/** From the upper rule to the base line of the small word. */
const labelBase = inset + lettering.small - 0.4
/** White between the small word, with its tails, and what is known. */
const labelAside = 0.8

/** How many lines of small letters have room below the small word. */
function linesBelowLabel({ top, bottom }: Bounds, more: number): number {
  const room = top - bottom - labelBase - more - labelAside - inset
  return Math.max(1, Math.floor((room - lettering.small) / smallPitch) + 1)
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
