import type { Text } from '../../src/drawing/mark.ts'
import type { Bounds } from '../../src/geometry/shape/contour.ts'
import { apply } from '../../src/geometry/shape/matrix.ts'
import type { Fonts } from '../../src/text/fonts.ts'
import { layOut } from '../../src/text/lay-out.ts'
import { textMatrix } from '../../src/text/place.ts'

/** The upright rectangle around what is black of a line of text. */
export function inkBox(fonts: Fonts, text: Text): Bounds {
  const laid = layOut(fonts[text.weight], text.words, text.height)
  const { left, bottom, right, top } = laid.box
  const corners = [
    { x: left, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
    { x: right, y: bottom },
  ].map(p => apply(textMatrix(laid, text), p))
  const xs = corners.map(c => c.x)
  const ys = corners.map(c => c.y)
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) }
}

/** Whether two boxes have at least so much white between them, in millimetres. */
export function apart(a: Bounds, b: Bounds, gap: number): boolean {
  return (
    a.left - gap >= b.right || b.left - gap >= a.right || a.bottom - gap >= b.top || b.bottom - gap >= a.top
  )
}
