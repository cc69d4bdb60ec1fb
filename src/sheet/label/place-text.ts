import { textMark } from '../../drawing/make-mark.ts'
import type { Layer, Mark } from '../../drawing/mark.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Fonts, Weight } from '../../text/fonts.ts'
import { measureLine } from '../../text/lay-out.ts'
import type { Words } from '../../text/words.ts'
import type { Extent } from './find-place.ts'

/** A line of text that can be put about a middle: how large it is, and its mark there. */
export type Label = { readonly extent: Extent; readonly markAt: (middle: Point) => Mark }

/** `upward` turns it to read from the bottom to the top; its layer is that of words unless it is said otherwise. */
export function label(
  fonts: Fonts,
  words: Words,
  height: number,
  subject: string,
  {
    layer = 'text',
    weight = 'regular',
    upward = false,
  }: { readonly layer?: Layer; readonly weight?: Weight; readonly upward?: boolean } = {},
): Label {
  const { width, ascent, descent } = measureLine(fonts[weight], words, height)
  const belongs = { layer, subject }
  // the base line lies this far below the middle of what the line takes
  const below = (ascent - descent) / 2
  if (upward) {
    return {
      extent: { width: ascent + descent, height: width },
      markAt: m =>
        textMark(belongs, words, { x: m.x + below, y: m.y - width / 2 }, height, {
          weight,
          angle: Math.PI / 2,
        }),
    }
  }
  return {
    extent: { width, height: ascent + descent },
    markAt: m => textMark(belongs, words, { x: m.x - width / 2, y: m.y - below }, height, { weight }),
  }
}
