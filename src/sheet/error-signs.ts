import { lettering } from '../drawing/lettering.ts'
import { pathMark } from '../drawing/make-mark.ts'
import type { FaceName } from '../finding/face-name.ts'
import { regionBounds } from '../geometry/measure/bounds.ts'
import { circle } from '../geometry/shape/circle.ts'
import type { Bounds } from '../geometry/shape/contour.ts'
import type { Point } from '../geometry/shape/point.ts'
import { faceOf, type Part, type Piece } from '../model/part.ts'
import type { Fonts } from '../text/fonts.ts'
import type { Board } from './label/board.ts'
import { label } from './label/place-text.ts'
import { type BesidePoint, putBesidePoints } from './put-beside-points.ts'
import type { SheetContext } from './sheet.ts'

/** Where something was found wrong on a face, and the number that the words about it begin with. */
export type ErrorSpot = { readonly at: Point; readonly number: number }

/** The errors of a part by their numbers: those that have a place to be marked at, in the order that they were found in. */
export function numberedErrors(part: Pick<Part, 'id'>, { errors }: Pick<SheetContext, 'errors'>) {
  const placed = errors?.get(part.id)?.filter(({ spots }) => spots.length > 0) ?? []
  return placed.map((error, i) => ({ ...error, number: i + 1 }))
}

/** What was found wrong on one face of a piece of either hand, in that face's own millimetres. */
export function errorSpotsOn(
  face: FaceName,
  part: Part,
  hand: Piece['hand'],
  context: Pick<SheetContext, 'errors'>,
): readonly ErrorSpot[] {
  const here = numberedErrors(part, context).flatMap(({ spots, number }) =>
    spots.filter(spot => spot.face === face).map(({ x, y }) => ({ at: { x, y }, number })),
  )
  if (hand === 'drawn' || here.length === 0) return here
  const { left, right } = regionBounds(faceOf(part.drawn, face).region)
  return here.map(({ at, number }) => ({ at: { x: left + right - at.x, y: at.y }, number }))
}

/** White between the letters of a sign and the ring round them. */
const insideRing = 0.35

/** Puts an exclamation mark with its number, in a ring, beside every spot, and says which numbers found room. */
export function putErrorSigns(
  spots: readonly ErrorSpot[],
  board: Board,
  area: Bounds,
  fonts: Fonts,
): readonly number[] {
  const belongs = { layer: 'text', subject: 'error' } as const
  const signs = spots.map(({ at, number }): BesidePoint => {
    const words = label(fonts, [`!${number}`], lettering.medium, 'error', { weight: 'bold' })
    const radius = Math.hypot(words.extent.width, words.extent.height) / 2 + insideRing
    return {
      at,
      extent: { width: 2 * radius, height: 2 * radius },
      marksAt: middle => [words.markAt(middle), pathMark(belongs, 'thin', [circle(middle, radius)])],
    }
  })
  const put = putBesidePoints(signs, belongs, board, area)
  return [...new Set(spots.flatMap(({ number }, i) => (put[i] ? [number] : [])))]
}
