import type { Bounds } from '../geometry/shape/contour.ts'
import { apply } from '../geometry/shape/matrix.ts'
import type { Fonts } from '../text/fonts.ts'
import { measureLine } from '../text/lay-out.ts'
import { textMatrix } from '../text/place.ts'
import type { Text } from './mark.ts'

/** The upright rectangle around a line of text as it stands, in the drawing's millimetres, ascenders and tails included. */
export function textBox(fonts: Fonts, text: Text): Bounds {
  const laid = measureLine(fonts[text.weight], text.words, text.height)
  const matrix = textMatrix(laid, text)
  const at = (x: number, y: number) => apply(matrix, { x, y })
  const [a, b] = [at(0, -laid.descent), at(laid.width, -laid.descent)]
  const [c, d] = [at(laid.width, laid.ascent), at(0, laid.ascent)]
  return {
    left: Math.min(a.x, b.x, c.x, d.x),
    right: Math.max(a.x, b.x, c.x, d.x),
    bottom: Math.min(a.y, b.y, c.y, d.y),
    top: Math.max(a.y, b.y, c.y, d.y),
  }
}
