import { lettering } from '../../drawing/lettering.ts'
import { middleOfBounds, regionBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Fonts } from '../../text/fonts.ts'
import type { Board } from '../label/board.ts'
import { spreadFrom } from '../label/find-place.ts'
import { label } from '../label/place-text.ts'
import { onPaper, type Panel } from './net.ts'
import { liesIn } from './panel-words.ts'

/** Finer than lettering is high, since it has to do with the room that everything else leaves. */
const step = 1

/**
 * Puts a piece's name inside the line that a net is cut along, so that it is still known when it is cut out: on the
 * first panel that has room, as large as there is room for. Returns whether there was any.
 */
export function putPieceName(
  panels: readonly Panel[],
  name: string,
  board: Board,
  area: Bounds,
  fonts: Fonts,
): boolean {
  return [lettering.large, lettering.medium, lettering.small].some(height =>
    panels.some(panel => {
      const region = onPaper(panel)
      const box = regionBounds(region)
      return [false, true].some(upward => {
        const { extent, markAt } = label(fonts, [name], height, 'piece', { weight: 'bold', upward })
        const places = spreadFrom(middleOfBounds(box), box, step)
        return board.place(places, extent, area, at => [markAt(at)], liesIn(region, extent)) !== undefined
      })
    }),
  )
}
