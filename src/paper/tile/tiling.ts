import type { Drawing } from '../../drawing/drawing.ts'
import { transformBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import { quarterTurns } from '../../geometry/shape/matrix.ts'
import type { Fonts } from '../../text/fonts.ts'
import type { Extent } from '../pack/item.ts'
import { type Axis, isWhole } from './axis.ts'
import { breakLettering } from './break-lettering.ts'
import { connected } from './connect.ts'
import { contentBoxes } from './content.ts'
import { cutMarks, holds } from './cut-marks.ts'
import { chooseGrid, fewestPages, type Grid } from './grid.ts'
import type { MeasuredMark } from './measured-mark.ts'
import { overDiagonal } from './over-diagonal.ts'
import { type Seam, seamsBetween } from './seams.ts'
import { type Spare, sparesOf } from './spare.ts'
import type { Tile } from './tile.ts'

/** How a drawing is cut into tiles, and how they lie on the paper. Boxes are in the drawing's own millimetres. */
export type Tiling = {
  /** Which of the rooms the pages have. */
  readonly room: number
  /** Whether the drawing is turned by a quarter, counter-clockwise, on its pages. */
  readonly turned: boolean
  /** As the pages lie: from the top row down, each from the left. */
  readonly tiles: readonly Tile[]
  readonly seams: readonly Seam[]
}

/**
 * Cuts a drawing into the fewest tiles over all ways that paper and drawing can lie, with its rows cut each by itself
 * or its columns; of equals the one whose seams cross the least, and of those the plainest. The marks come back with the
 * lines broken that are too long for any tile.
 *
 * @throws RangeError when a room is hardly larger than the overlap: a fault of the caller
 */
export function tileDrawing(
  { bounds, keepWhole }: Pick<Drawing, 'bounds' | 'keepWhole'>,
  marks: readonly MeasuredMark[],
  rooms: readonly Extent[],
  overlap: number,
  fonts: Fonts,
): { readonly tiling: Tiling; readonly marks: readonly MeasuredMark[] } {
  const content = contentBoxes(marks)
  const spares = sparesOf(marks, keepWhole)
  const { grid, variant } = bestGrid(bounds, rooms, content, spares, overlap)
  const { turned, columnsFirst } = variant
  const all = tilesOf(grid, overlap).map(({ cell, window }) =>
    columnsFirst ? { cell: overDiagonal(cell), window: overDiagonal(window) } : { cell, window },
  )
  const broken = breakLettering(marks, all, fonts)
  const shown = all.flatMap(({ window }, i) =>
    content.some(box => holds(window, box)) || cutMarks(broken, window, fonts).length > 0 ? [i] : [],
  )
  const kept = connected(new Set(shown), neighboursOf(all, turned))
  const tiles = all.filter((_, i) => kept.has(i)).sort(inReadingOrder(variant))
  const seams = seamsBetween(
    tiles.map(({ cell }) => cell),
    turned,
  )
  return { tiling: { room: variant.room, turned, tiles, seams }, marks: broken }
}

type Variant = {
  readonly room: number
  readonly extent: Extent
  readonly turned: boolean
  readonly columnsFirst: boolean
}

/** The plainest first. */
function variants(rooms: readonly Extent[]): readonly Variant[] {
  return rooms.flatMap((extent, room) =>
    [false, true].flatMap(turned =>
      [false, true].map(columnsFirst => ({ room, extent, turned, columnsFirst })),
    ),
  )
}

/** The best way to cut; the grid of a way that cannot be better than one that is known is not made. */
function bestGrid(
  bounds: Bounds,
  rooms: readonly Extent[],
  content: readonly Bounds[],
  spares: readonly Spare[],
  overlap: number,
): { readonly variant: Variant; readonly grid: Grid } {
  const fewest = fewestPages(content)
  let best: { readonly variant: Variant; readonly grid: Grid } | undefined
  for (const variant of variants(rooms)) {
    const { columnsFirst } = variant
    const [across, along] = axesOf(variant, bounds, overlap)
    // one row is cut into columns, and one column into rows, whichever is cut first: this way is the quicker
    if ((isWhole(across) || isWhole(along)) && columnsFirst === isWhole(along)) continue
    if (best !== undefined) {
      const least = fewest(across, along)
      if (best.grid.harm === 0 ? least >= best.grid.pages : least > best.grid.pages) continue
    }
    // columns that are cut each by itself are rows of the drawing seen over its diagonal
    const seen = (box: Bounds): Bounds => (columnsFirst ? overDiagonal(box) : box)
    const grid = chooseGrid(
      content.map(seen),
      spares.map(({ kind, box }) => ({ kind, box: seen(box) })),
      ...(columnsFirst ? ([along, across] as const) : ([across, along] as const)),
      best?.grid,
    )
    if (grid !== undefined) best = { variant, grid }
  }
  return best!
}

/** The two directions of a drawing, as it lies in its own millimetres. */
function axesOf(
  { extent, turned }: Variant,
  { left, right, bottom, top }: Bounds,
  overlap: number,
): readonly [across: Axis, along: Axis] {
  const [width, height] = turned ? [extent.height, extent.width] : [extent.width, extent.height]
  return [
    { from: left, to: right, reach: width, overlap },
    { from: bottom, to: top, reach: height, overlap },
  ]
}

function tilesOf({ rows }: Grid, overlap: number): readonly Tile[] {
  const half = overlap / 2
  return rows.flatMap(({ bottom, top, columns }, row) =>
    columns.slice(1).map((right, i): Tile => {
      const left = columns[i]!
      const cell = { left, right, bottom, top }
      return {
        cell,
        window: {
          left: i > 0 ? left - half : left,
          right: i < columns.length - 2 ? right + half : right,
          bottom: row > 0 ? bottom - half : bottom,
          top: row < rows.length - 1 ? top + half : top,
        },
      }
    }),
  )
}

function neighboursOf(tiles: readonly Tile[], turned: boolean): readonly (readonly number[])[] {
  const neighbours = tiles.map((): number[] => [])
  const cells = tiles.map(({ cell }) => cell)
  for (const { before, after } of seamsBetween(cells, turned)) {
    neighbours[before]!.push(after)
    neighbours[after]!.push(before)
  }
  return neighbours
}

/** Rows from the top, each from the left; where the columns are cut each by itself, these from the left. */
function inReadingOrder({ turned, columnsFirst }: Variant): (a: Tile, b: Tile) => number {
  const laid = ({ cell }: Tile): Bounds => transformBounds(cell, quarterTurns(turned ? 1 : 0))
  const rowsOnPaper = turned === columnsFirst
  return (a, b) => {
    const [p, q] = [laid(a), laid(b)]
    const [down, across] = [q.top - p.top, p.left - q.left]
    return rowsOnPaper ? down || across : across || down
  }
}
