import type { Drawing } from '../../drawing/drawing.ts'
import { boundsOfMarks } from '../../drawing/mark-bounds.ts'
import type { Fonts } from '../../text/fonts.ts'
import type { Extent } from '../pack/item.ts'
import { type Crossed, crossedBy } from './crossed.ts'
import { cutter } from './cut-marks.ts'
import { matchMarks } from './match-marks.ts'
import { sparesOf } from './spare.ts'
import { spareLettering } from './spare-lettering.ts'
import { type Tiling, tileDrawing } from './tiling.ts'

/** A drawing on several pages: the tiling, what each tile shows, in the drawing's own millimetres, and what is cut by a seam. */
export type TiledDrawing = {
  readonly tiling: Tiling
  readonly tiles: readonly Drawing[]
  readonly crossed: Crossed
}

/** Cuts a drawing into tiles with seams and match marks on them, which two neighbours show alike. */
export function tiled(
  drawing: Drawing,
  rooms: readonly Extent[],
  overlap: number,
  fonts: Fonts,
): TiledDrawing {
  const tiling = tileDrawing(drawing, rooms, overlap, fonts)
  const windows = tiling.tiles.map(({ window }) => window)
  const marks = spareLettering(drawing.marks, tiling.tiles, fonts)
  const spares = sparesOf({ ...drawing, marks }, fonts)
  const taken = spares.flatMap(({ kind, box }) => (kind === 'end' ? [] : [box]))
  const cut = cutter(marks, fonts)
  const onSeams = matchMarks(tiling.seams, taken, tiling.turned)
  const tiles = windows.map((window, i): Drawing => {
    const ownSeams = onSeams.filter((_, k) => {
      const { before, after } = tiling.seams[k]!
      return before === i || after === i
    })
    const shown = [...cut(window), ...cutter(ownSeams.flat(), fonts)(window)]
    return {
      ...drawing,
      id: `${drawing.id}-tile-${i + 1}`,
      description: `${drawing.description === undefined ? '' : `${drawing.description}; `}tile ${i + 1} of ${windows.length}`,
      marks: shown,
      bounds: boundsOfMarks(fonts, shown),
      keepWhole: [],
    }
  })
  return { tiling, tiles, crossed: crossedBy(tiling.seams, spares) }
}
