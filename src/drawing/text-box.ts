import { transformBounds } from '../geometry/measure/bounds.ts'
import type { Bounds } from '../geometry/shape/contour.ts'
import type { Fonts } from '../text/fonts.ts'
import { measureLine } from '../text/lay-out.ts'
import { textMatrix } from '../text/place.ts'
import type { Text } from './mark.ts'

/** The upright rectangle around a line of text as it stands, in the drawing's millimetres, ascenders and tails included. */
export function textBox(fonts: Fonts, text: Text): Bounds {
  const laid = measureLine(fonts[text.weight], text.words, text.height)
  const line = { left: 0, right: laid.width, bottom: -laid.descent, top: laid.ascent }
  return transformBounds(line, textMatrix(laid, text))
}
