import { textMark } from '../drawing/make-mark.ts'
import type { Mark, Text } from '../drawing/mark.ts'
import type { Placed } from '../drawing/page.ts'
import { textBox } from '../drawing/text-box.ts'
import { middleOfBounds } from '../geometry/measure/bounds.ts'
import type { Fonts } from '../text/fonts.ts'

/**
 * A drawing as it is read on its page: lettering that a quarter turn of the drawing would stand on its head is turned
 * half about the middle of its box, which stays where it is. So all of a page is read from the bottom or from the right,
 * as ISO 129-1 has it (from memory). What was drawn upside down stays so: it is read with the paper turned round.
 */
export function readUpright({ drawing, matrix }: Placed, fonts: Fonts): Placed {
  const turns = Math.atan2(matrix.b, matrix.a) / quarter
  if (turns === 0) return { drawing, matrix }
  const onItsHead = ({ angle }: Text): boolean =>
    isUpright(angle / quarter) && !isUpright(angle / quarter + turns)
  const marks = drawing.marks.map(mark =>
    mark.kind === 'text' && onItsHead(mark) ? halfTurned(mark, fonts) : mark,
  )
  return { drawing: { ...drawing, marks }, matrix }
}

const quarter = Math.PI / 2

/** Whether lettering that is turned by so many quarters reads to the right, or straight up. */
function isUpright(quarters: number): boolean {
  const within = quarters - 4 * Math.ceil((quarters - 2) / 4)
  return within > -1 && within <= 1
}

function halfTurned(text: Text & Mark, fonts: Fonts): Mark {
  const { words, at, height, align, angle, weight } = text
  const { x, y } = middleOfBounds(textBox(fonts, text))
  return textMark(text, words, { x: 2 * x - at.x, y: 2 * y - at.y }, height, {
    align,
    angle: angle > 0 ? angle - Math.PI : angle + Math.PI,
    weight,
  })
}
