import type { Drawing } from '../drawing/drawing.ts'
import type { Page, Paper } from '../drawing/page.ts'
import { shift } from '../geometry/shape/matrix.ts'
import type { Unit } from '../length/unit.ts'
import type { Fonts } from '../text/fonts.ts'
import type { Workshop } from '../workshop/workshop.ts'
import { fillPages, type Misfit, type PageContent, usualOverlap } from './fill-pages.ts'
import { frameOf } from './frame.ts'
import { furniture, type TileFacts } from './furniture.ts'
import { type Extent, extentOf } from './pack/item.ts'
import { type PageMap, pageMapOf } from './page-map.ts'
import { upright } from './papers.ts'
import { correctionFor, type Printer } from './printer/printer.ts'
import { readUpright } from './read-upright.ts'
import type { SheetToLay } from './sheet-to-lay.ts'
import type { Crossed } from './tile/crossed.ts'
import { joining } from './tile/joining.ts'

export type LayOptions = {
  readonly paper: Paper
  /** The plan's units, which the scale bars show first. */
  readonly units: Unit
  readonly workshop: Pick<Workshop, 'printer'>
  /** The printer to correct for. */
  readonly printer?: Printer
  /** What two tiles of one drawing share, in millimetres. */
  readonly overlap?: number
}

/** Which pages these are of a packet: how many come before the first, and how many there are in all. */
export type Numbering = { readonly before: number; readonly count: number }

/** A sheet that goes over several pages. */
export type LaidLarge = {
  readonly id: string
  readonly crossed: Crossed
  readonly map: (before: number) => PageMap
}

export type LaidPages = {
  readonly count: number
  /** No layout has fewer pages than this, by the areas of what is on them. */
  readonly areaBound: number
  /** The pages that a sheet is on, by its id, counted from 1 when none come before. */
  readonly onPages: ReadonlyMap<string, readonly number[]>
  readonly large: readonly LaidLarge[]
  readonly misfits: readonly Misfit[]
  /** The pages, each made when it is asked for; unless said otherwise these are all there are. */
  readonly pages: (numbering?: Numbering) => Iterable<Page>
}

/**
 * Sheets on pages, true to size: small ones share a page, what is larger than a page goes over several. The order is
 * that of the sheets, as far as sharing pages lets it be.
 */
export function layOutPages(sheets: readonly SheetToLay[], options: LayOptions, fonts: Fonts): LaidPages {
  const { paper, workshop, overlap = usualOverlap } = options
  const { pages, areaBound, large, misfits } = fillPages(sheets, paper, workshop, overlap, fonts)
  const onPages = new Map<string, readonly number[]>()
  const tilePages = new Map(large.map(one => [one, [] as number[]]))
  pages.forEach(({ placed, tile }, i) => {
    if (tile !== undefined) tilePages.get(tile.large)![tile.index] = i + 1
    for (const { sheet } of placed) {
      const { id } = sheets[sheet]!
      const known = onPages.get(id) ?? []
      if (known.at(-1) !== i + 1) onPages.set(id, [...known, i + 1])
    }
  })
  const maps = new Map(
    large.map(one => {
      const map = (before: number): PageMap =>
        pageMapOf(
          one.drawing,
          one.tiling,
          tilePages.get(one)!.map(page => page + before),
        )
      return [one, map]
    }),
  )
  const tileFacts = ({ large: one, index }: NonNullable<PageContent['tile']>, before: number): TileFacts => ({
    map: maps.get(one)!(before),
    joining: joining(
      one.tiling,
      index,
      tilePages.get(one)!.map(page => page + before),
    ),
  })
  return {
    count: pages.length,
    areaBound,
    onPages,
    large: large.map(one => ({
      id: sheets[one.sheet]!.id,
      crossed: one.crossed,
      map: maps.get(one)!,
    })),
    misfits,
    pages: (numbering = { before: 0, count: pages.length }) => ({
      [Symbol.iterator]: () => makePages(pages, numbering, options, tileFacts, fonts),
    }),
  }
}

function* makePages(
  pages: readonly PageContent[],
  { before, count }: Numbering,
  { units, printer }: LayOptions,
  tileFacts: (tile: NonNullable<PageContent['tile']>, before: number) => TileFacts,
  fonts: Fonts,
): Generator<Page> {
  // the bars are the same on every page of a frame
  const frames = new Set(pages.map(({ frame }) => frame))
  const furnish = new Map([...frames].map(frame => [frame, furniture(frame, units, fonts)]))
  for (const [i, { frame, placed, tile }] of pages.entries()) {
    const number = before + i + 1
    yield {
      paper: frame.paper,
      number,
      placed: placed.map(one => readUpright(one, fonts)),
      furniture: furnish.get(frame)!({
        captions: placed.map(({ drawing }) => drawing.caption),
        number,
        count,
        ...(printer === undefined ? {} : { printer: printer.name }),
        ...(tile === undefined ? {} : { tile: tileFacts(tile, before) }),
      }),
      correction: correctionFor(printer, frame.paper),
    }
  }
}

/** The free space of an upright page, in millimetres. */
export function wholeBody({ paper, workshop }: Pick<LayOptions, 'paper' | 'workshop'>): Extent {
  return extentOf(frameOf(upright(paper), workshop).body)
}

/**
 * Drawings that were made to fill a page, each on an upright one of its own; `label` is what viewers call these pages, and
 * together they are one entry of the list of contents, `bookmark`.
 */
export function layOneEach(
  drawings: readonly Drawing[],
  { label, bookmark }: { readonly label: string; readonly bookmark: string },
  options: LayOptions,
  numbering: Numbering,
  fonts: Fonts,
): readonly Page[] {
  const frame = frameOf(upright(options.paper), options.workshop)
  const pages = drawings.map((drawing): PageContent => {
    const matrix = shift(frame.body.left - drawing.bounds.left, frame.body.top - drawing.bounds.top)
    return { frame, placed: [{ drawing, matrix, sheet: 0 }] }
  })
  return [...makePages(pages, numbering, options, noTile, fonts)].map((page, i) => ({
    ...page,
    label: pages.length === 1 ? label : `${label} ${i + 1}`,
    bookmarks: [[bookmark]],
  }))
}

function noTile(): never {
  throw new RangeError('a page of its own shows no tile')
}
