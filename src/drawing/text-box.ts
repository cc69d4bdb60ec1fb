import type { Bounds } from '../geometry/shape/contour.ts'
import { apply } from '../geometry/shape/matrix.ts'
import type { Fonts } from '../text/fonts.ts'
import { layOut } from '../text/lay-out.ts'
import { textMatrix } from '../text/place.ts'
import type { Text } from './mark.ts'

/** The upright rectangle around a line of text as it stands, in the drawing's millimetres, ascenders and tails included. */
export function textBox(fonts: Fonts, text: Text): Bounds {
  const laid = layOut(fonts[text.weight], text.words, text.height)
  const matrix = textMatrix(laid, text)
  const corners = [
    { x: 0, y: -laid.descent },
    { x: laid.width, y: -laid.descent },
    { x: laid.width, y: laid.ascent },
    { x: 0, y: laid.ascent },
  ].map(corner => apply(matrix, corner))
  const xs = corners.map(c => c.x)
  const ys = corners.map(c => c.y)
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) }
}
