import { lettering } from '../../drawing/lettering.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Fonts } from '../../text/fonts.ts'
import type { Board } from '../label/board.ts'
import { type Extent, spreadFrom } from '../label/find-place.ts'
import { label } from '../label/place-text.ts'
import type { OnWood } from './edge-marks.ts'
import { grainArrow, grainArrowBreadth } from './grain-arrow.ts'

/** From one place that is tried to the next. */
const step = 2

/** Where something about the middle of a part may stand: places in its area, the nearest to its middle first, on the wood. */
export type Middles = { readonly area: Bounds; readonly places: Iterable<Point>; readonly onWood: OnWood }

export function middlesOf(area: Bounds, onWood: OnWood): Middles {
  const middle = { x: (area.left + area.right) / 2, y: (area.bottom + area.top) / 2 }
  return { area, places: spreadFrom(middle, area, step), onWood }
}

/** The name of the piece, as large as there is room for, along the part or else across it. */
export function putName(board: Board, middles: Middles, name: string, fonts: Fonts): boolean {
  return [lettering.large, lettering.medium, lettering.small].some(height =>
    [false, true].some(upward => {
      const { extent, markAt } = label(fonts, [name], height, 'piece', { weight: 'bold', upward })
      return putFreely(board, middles, extent, at => [markAt(at)])
    }),
  )
}

/** The arrow along the grain with its word, as long as there is room for. */
export function putGrain(
  board: Board,
  middles: Middles,
  direction: 'along' | 'across',
  fonts: Fonts,
): boolean {
  const upward = direction === 'across'
  const word = label(fonts, ['grain'], lettering.medium, 'grain', { upward })
  const wordLength = upward ? word.extent.height : word.extent.width
  const breadth = Math.max(upward ? word.extent.width : word.extent.height, grainArrowBreadth)
  return [40, 28, 18, 12].some(length => {
    const total = length + 2 + wordLength
    const extent = upward ? { width: breadth, height: total } : { width: total, height: breadth }
    const along = (at: Point, by: number): Point =>
      upward ? { x: at.x, y: at.y + by } : { x: at.x + by, y: at.y }
    return putFreely(board, middles, extent, at => [
      ...grainArrow(along(at, (total - length) / 2), length, direction),
      word.markAt(along(at, (wordLength - total) / 2)),
    ])
  })
}

/** With plenty of white around it where there is room, so that it is not read together with what stands beside it. */
function putFreely(
  board: Board,
  { area, places, onWood }: Middles,
  { width, height }: Extent,
  marksAt: (middle: Point) => readonly Mark[],
): boolean {
  return [2.5, 0].some(white => {
    const extent = { width: width + 2 * white, height: height + 2 * white }
    return board.place(places, extent, area, marksAt, onWood) !== undefined
  })
}
