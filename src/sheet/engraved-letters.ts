import type { Bounds, Contour } from '../geometry/shape/contour.ts'
import { transformContour } from '../geometry/shape/transform.ts'
import type { EngravedText } from '../model/feature.ts'
import { printable } from '../number/tolerance.ts'
import type { Fonts } from '../text/fonts.ts'
import { type Laid, layOut } from '../text/lay-out.ts'
import { letterContours } from '../text/letter-contours.ts'
import { textMatrix } from '../text/place.ts'

/** Letters to be engraved follow the font far closer than they can be printed. */
const maxDeviation = printable / 10

/** The outlines of an engraved text, where it stands on its face. */
export function engravedLetters(shape: EngravedText, fonts: Fonts): readonly Contour[] {
  const laid = laidOf(shape, fonts)
  const matrix = textMatrix(laid, { at: shape.at, align: shape.align, angle: 0 })
  return letterContours(laid, maxDeviation).map(contour => transformContour(contour, matrix))
}

/** The rectangle that its letters lie in. */
export function engravedBox(shape: EngravedText, fonts: Fonts): Bounds {
  const laid = laidOf(shape, fonts)
  const { e, f } = textMatrix(laid, { at: shape.at, align: shape.align, angle: 0 })
  const { left, right, bottom, top } = laid.box
  return { left: left + e, right: right + e, bottom: bottom + f, top: top + f }
}

function laidOf({ text, height }: EngravedText, fonts: Fonts): Laid {
  return layOut(fonts.regular, [text], height.mm)
}
