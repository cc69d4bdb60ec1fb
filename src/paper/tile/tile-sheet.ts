import type { Drawing } from '../../drawing/drawing.ts'
import { joinAllBounds } from '../../geometry/measure/bounds.ts'
import type { Fonts } from '../../text/fonts.ts'
import type { Extent } from '../pack/item.ts'
import { type Crossed, crossedBy } from './crossed.ts'
import { cutMarks } from './cut-marks.ts'
import { matchMarks } from './match-marks.ts'
import { measureMark } from './measured-mark.ts'
import { sparesOf } from './spare.ts'
import { spareLettering } from './spare-lettering.ts'
import { takenBy } from './taken.ts'
import { type Tiling, tileDrawing } from './tiling.ts'

/** A drawing on several pages: the tiling, what each tile shows, in the drawing's own millimetres, and what is cut by a seam. */
export type TiledDrawing = {
  readonly tiling: Tiling
  readonly tiles: readonly Drawing[]
  readonly crossed: Crossed
  /** How many lines of lettering had to be moved or broken, and how many are hard to read all the same. */
  readonly moved: number
  readonly spoilt: number
}

/** Cuts a drawing into tiles with seams and match marks on them, which two neighbours show alike. */
export function tiled(
  drawing: Drawing,
  rooms: readonly Extent[],
  overlap: number,
  fonts: Fonts,
): TiledDrawing {
  const whole = drawing.marks.map(mark => measureMark(mark, fonts))
  const { tiling, marks: broken } = tileDrawing(drawing, whole, rooms, overlap, fonts)
  const windows = tiling.tiles.map(({ window }) => window)
  const { marks, moved, spoilt } = spareLettering(broken, tiling.tiles)
  const spares = sparesOf(marks, drawing.keepWhole)
  const onSeams = matchMarks(tiling.seams, takenBy(marks, spares), tiling.turned).map(list =>
    list.map(mark => measureMark(mark, fonts)),
  )
  const tiles = windows.map((window, i): Drawing => {
    const ownSeams = onSeams.filter((_, k) => {
      const { before, after } = tiling.seams[k]!
      return before === i || after === i
    })
    const shown = cutMarks([...marks, ...ownSeams.flat()], window, fonts)
    return {
      ...drawing,
      id: `${drawing.id}-tile-${i + 1}`,
      description: `${drawing.description === undefined ? '' : `${drawing.description}; `}tile ${i + 1} of ${windows.length}`,
      marks: shown.map(({ mark }) => mark),
      bounds: joinAllBounds(shown.map(({ box }) => box)),
      keepWhole: [],
    }
  })
  return {
    tiling,
    tiles,
    crossed: crossedBy(tiling.seams, spares),
    moved: moved + broken.length - whole.length,
    spoilt,
  }
}
