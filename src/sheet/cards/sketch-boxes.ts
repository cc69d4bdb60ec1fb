import { lettering } from '../../drawing/lettering.ts'
import { pathMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Side } from '../../finding/side.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import type { Fonts } from '../../text/fonts.ts'
import { downToLast, fittedMarks, fitWords } from './fit-words.ts'
import { inset } from './lay-out-fields.ts'

const belongs = { layer: 'text', subject: 'sketch' } as const
/** White between two boxes: they are six sides, not one outline. */
const between = 2
/** Of the room, what an end takes of its width, and an edge and the front of its height; the back has the rest. */
const share = { end: 0.19, edge: 0.14, front: 0.4 } as const

const words: Readonly<Record<Side, string>> = {
  front: 'front: the face side',
  back: 'back, seen from behind',
  left: 'left end',
  right: 'right end',
  top: 'top edge',
  bottom: 'bottom edge',
}

/**
 * The six sides to sketch on, each as it is seen from outside: the ends and edges stand where they are seen from the
 * front, what is near the front lies near it, and the back stands below.
 */
export function sketchBoxes(
  room: Bounds,
  names: Readonly<Record<string, string>>,
  fonts: Fonts,
): readonly Mark[] {
  return Object.entries(boxes(room)).flatMap(([side, box]) => {
    const own = names[side]
    const label = own === undefined ? words[side as Side] : `${words[side as Side]} (${own})`
    const width = box.right - box.left - 2 * inset
    const shown = fitWords([label], { height: lettering.small, width, most: 2 }, fonts)
    const last = box.top - inset - lettering.small - downToLast(shown)
    return [
      pathMark(belongs, 'thin', [rectangle(box).outer]),
      ...fittedMarks(shown, { x: box.left + inset, y: last }, belongs),
    ]
  })
}

function boxes({ left, right, top, bottom }: Bounds): Readonly<Record<Side, Bounds>> {
  const width = right - left
  const height = top - bottom
  const frontLeft = left + share.end * width
  const frontRight = right - share.end * width
  const frontTop = top - share.edge * height
  const frontBottom = frontTop - share.front * height
  const backTop = frontBottom - share.edge * height
  const middle = { left: frontLeft, right: frontRight }
  const level = { top: frontTop, bottom: frontBottom }
  return {
    top: { ...middle, top, bottom: frontTop + between },
    left: { ...level, left, right: frontLeft - between },
    front: { ...middle, ...level },
    right: { ...level, left: frontRight + between, right },
    bottom: { ...middle, top: frontBottom - between, bottom: backTop },
    back: { ...middle, top: backTop - between, bottom },
  }
}
