import type { Drawing } from '../drawing/drawing.ts'
import { lineStyles } from '../drawing/line-role.ts'
import type { Paper, Placed } from '../drawing/page.ts'
import { transformBounds } from '../geometry/measure/bounds.ts'
import { compose, quarterTurns, shift } from '../geometry/shape/matrix.ts'
import type { Fonts } from '../text/fonts.ts'
import type { Workshop } from '../workshop/workshop.ts'
import { type Frame, frameOf } from './frame.ts'
import type { StartedPage } from './pack/fill.ts'
import { type Extent, extentOf, fitsIn } from './pack/item.ts'
import { pack } from './pack/pack.ts'
import { lying, upright } from './papers.ts'
import type { SheetInstead, SheetToLay } from './sheet-to-lay.ts'
import { type TiledDrawing, tiled } from './tile/tile-sheet.ts'

/** What lies on a page, before the page has a number. */
export type PageContent = {
  readonly frame: Frame
  /** The sheets' places in the list, and what of each lies where. */
  readonly placed: readonly (Placed & { readonly sheet: number })[]
  /** Of a page that shows a tile: of which sheet, and the number of the tile. */
  readonly tile?: { readonly large: TiledSheet; readonly index: number }
}

/** A sheet that goes over several pages. */
export type TiledSheet = TiledDrawing & { readonly sheet: number; readonly drawing: Drawing }

/** A sheet that would take more pages than anybody joins, or that has to be on one and fits none, with the room it wants and the room there is, in millimetres. */
export type Misfit = {
  readonly id: string
  readonly wanted: Extent
  readonly available: Extent
  /** Whether what lies beside it is on the pages without it. */
  readonly othersLaid: boolean
}

export type FilledPages = {
  readonly pages: readonly PageContent[]
  readonly areaBound: number
  readonly large: readonly TiledSheet[]
  readonly misfits: readonly Misfit[]
}

/** What two tiles share where nothing else is wanted, and the white to cut along between two sheets on a page. Millimetres. */
export const usualOverlap = 10
const cuttingGap = 5

/** A drawing over more pages cannot be joined true, and is more likely a mistake in a size. */
const mostTiles = 300

/**
 * Decides which page everything lies on, and where. Sheets that fit a page share pages; larger ones go over several,
 * and what these leave free is used too. Paper lies where that saves pages.
 */
export function fillPages(
  sheets: readonly SheetToLay[],
  paper: Paper,
  workshop: Pick<Workshop, 'printer'>,
  overlap: number,
  fonts: Fonts,
): FilledPages {
  const ways = [upright(paper), lying(paper)]
  const frames = ways.map(way => frameOf(way, workshop))
  const rooms = frames.map(({ body }) => extentOf(body))
  const tileFrames = ways.map(way => frameOf(way, workshop, 'tile'))
  const tileRooms = tileFrames.map(({ body }) => withoutInk(extentOf(body)))
  const fits = (drawings: readonly Pick<Drawing, 'bounds'>[]): boolean =>
    drawings.some(({ bounds }) => rooms.some(room => fitsIn(extentOf(bounds), room)))

  const whole: { readonly sheet: number; readonly drawings: readonly Drawing[] }[] = []
  const large: TiledSheet[] = []
  const misfits: Misfit[] = []
  sheets.forEach(({ id, drawings, otherwise = [], large: apart }, sheet) => {
    const own: readonly SheetInstead[] = [
      { drawings },
      ...(apart === undefined ? [] : [{ drawings: [apart.drawing] as const, beside: [apart.beside] }]),
    ]
    const isHeld = ({ drawings, beside = [], holds = [] }: SheetInstead) =>
      holds.every(held => fits([held])) && fits(drawings) && beside.every(fits)
    // where what all arrangements hold fits nowhere, none of them need be made
    let fitting = apart === undefined || fits([apart.drawing]) ? own.find(isHeld) : undefined
    let last: SheetInstead | undefined
    for (const one of fitting === undefined ? otherwise : []) {
      last = one
      if (isHeld(one)) {
        fitting = one
        break
      }
    }
    if (fitting !== undefined) {
      for (const shapes of [fitting.drawings, ...(fitting.beside ?? [])])
        whole.push({ sheet, drawings: shapes })
      return
    }
    if (last !== undefined && apart === undefined) {
      const all = [last.drawings, ...(last.beside ?? [])]
      const tooLarge = all.find(shapes => !fits(shapes)) ?? last.drawings
      // words and tables serve alone too
      const others = last.beside?.filter(fits) ?? []
      for (const drawings of others) whole.push({ sheet, drawings })
      misfits.push({
        id,
        wanted: extentOf(tooLarge.at(-1)!.bounds),
        available: rooms[0]!,
        othersLaid: others.length > 0,
      })
      return
    }
    const { drawing, roomier, beside } =
      apart !== undefined && fits(apart.beside) ? apart : { drawing: drawings[0] }
    const wanted = extentOf(drawing.bounds)
    if (tilesWanted(wanted, tileRooms[0]!, overlap) > mostTiles) {
      misfits.push({ id, wanted, available: tileRooms[0]!, othersLaid: false })
      return
    }
    const onTiles = (drawing: Drawing) => ({ drawing, ...tiled(drawing, tileRooms, overlap, fonts) })
    const plain = onTiles(drawing)
    const other = plain.moved > 0 && roomier !== undefined ? onTiles(roomier) : plain
    const isBetter = (other.spoilt - plain.spoilt || other.moved - plain.moved) < 0
    large.push({ sheet, ...(isBetter ? other : plain) })
    if (beside !== undefined) whole.push({ sheet, drawings: beside })
  })

  const tiles = large.flatMap(one => one.tiles.map((drawing, index) => ({ large: one, drawing, index })))
  const { pages, areaBound } = pack(
    whole.map(({ sheet, drawings }) => ({
      group: sheets[sheet]!.group,
      shapes: drawings.map(({ bounds }) => extentOf(bounds)),
    })),
    rooms,
    {
      gap: cuttingGap,
      started: tiles.map(({ large: { tiling, sheet }, drawing }): StartedPage => {
        const extent = extentOf(drawing.bounds)
        return {
          group: sheets[sheet]!.group,
          room: extentOf(tileFrames[tiling.room]!.body),
          taken: tiling.turned ? { width: extent.height, height: extent.width } : extent,
        }
      }),
    },
  )
  const contents = pages.map(({ room, spots }, i): PageContent => {
    const tile = tiles[i]
    const frame = tile === undefined ? frames[room!]! : tileFrames[tile.large.tiling.room]!
    // as they are read, whatever was placed first
    const inOrder = spots.toSorted((a, b) => a.item - b.item)
    const beside = inOrder.map(({ item, shape, turned, x, y }) => {
      const { sheet, drawings } = whole[item]!
      return { sheet, ...placedAt(drawings[shape]!, turned, frame, x, y) }
    })
    if (tile === undefined) return { frame, placed: beside }
    const { large, drawing, index } = tile
    return {
      frame,
      placed: [{ sheet: large.sheet, ...placedAt(drawing, large.tiling.turned, frame, 0, 0) }, ...beside],
      tile: { large, index },
    }
  })
  return { pages: contents.toSorted(bySheet), areaBound, large, misfits }
}

/** The lines along a tile's border are as wide to the outside as to the inside. */
function withoutInk({ width, height }: Extent): Extent {
  return { width: width - lineStyles.wide.width, height: height - lineStyles.wide.width }
}

function tilesWanted(wanted: Extent, room: Extent, overlap: number): number {
  return Math.ceil(wanted.width / (room.width - overlap)) * Math.ceil(wanted.height / (room.height - overlap))
}

/** `x` to the right and `y` down from the upper left corner of the page's free space. */
function placedAt(drawing: Drawing, turned: boolean, { body }: Frame, x: number, y: number): Placed {
  const turn = quarterTurns(turned ? 1 : 0)
  const box = transformBounds(drawing.bounds, turn)
  return { drawing, matrix: compose(turn, shift(body.left + x - box.left, body.top - y - box.top)) }
}

/** Pages in the order of the sheets that begin on them; the tiles of one sheet in their own. */
function bySheet(a: PageContent, b: PageContent): number {
  const first = ({ tile, placed }: PageContent): number =>
    tile?.large.sheet ?? Math.min(...placed.map(({ sheet }) => sheet))
  return first(a) - first(b)
}
