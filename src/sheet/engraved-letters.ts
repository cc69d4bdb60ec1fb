import { shiftBounds } from '../geometry/measure/bounds.ts'
import type { Bounds, Contour } from '../geometry/shape/contour.ts'
import { type Matrix, shift } from '../geometry/shape/matrix.ts'
import { transformContour } from '../geometry/shape/transform.ts'
import type { EngravedText } from '../model/feature.ts'
import { printable } from '../number/tolerance.ts'
import type { Fonts } from '../text/fonts.ts'
import { type Laid, layOut } from '../text/lay-out.ts'
import { letterContours } from '../text/letter-contours.ts'

/** Letters to be engraved follow the font far closer than they can be printed. */
const maxDeviation = printable / 10

/** The outlines of an engraved text, where it stands on its face. */
export function engravedLetters(shape: EngravedText, fonts: Fonts): readonly Contour[] {
  const { laid, matrix } = placed(shape, fonts)
  return letterContours(laid, maxDeviation).map(contour => transformContour(contour, matrix))
}

/** The rectangle that its letters lie in. */
export function engravedBox(shape: EngravedText, fonts: Fonts): Bounds {
  const { laid, matrix } = placed(shape, fonts)
  return shiftBounds(laid.box, matrix.e, matrix.f)
}

/** The place is that of the letters themselves, not of the white that a font leaves beside them. */
function placed(
  { text, height, at, align }: EngravedText,
  fonts: Fonts,
): { readonly laid: Laid; readonly matrix: Matrix } {
  const laid = layOut(fonts.regular, [text], height.mm)
  const { left, right } = laid.box
  const origin = { start: left, middle: (left + right) / 2, end: right }[align]
  return { laid, matrix: shift(at.x - origin, at.y) }
}
