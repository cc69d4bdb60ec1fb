import type { Drawing } from '../drawing/drawing.ts'
import { lettering } from '../drawing/lettering.ts'
import { lineStyles } from '../drawing/line-role.ts'
import { pathMark, textMark } from '../drawing/make-mark.ts'
import type { Mark } from '../drawing/mark.ts'
import { clipPaths } from '../geometry/cut/clip-path.ts'
import {
  contourBounds,
  joinAllBounds,
  middleOfBounds,
  scaleBounds,
  shiftBounds,
  transformBounds,
} from '../geometry/measure/bounds.ts'
import type { Bounds, Contour, Region } from '../geometry/shape/contour.ts'
import { compose, quarterTurns, scale, shift } from '../geometry/shape/matrix.ts'
import { rectangle } from '../geometry/shape/rectangle.ts'
import { transformContour } from '../geometry/shape/transform.ts'
import { coincident } from '../number/tolerance.ts'
import type { Tiling } from './tile/tiling.ts'

/** A large drawing with the pages that show it: its outline, and a cell with a page number for each page. */
export type PageMap = {
  readonly outline: readonly Contour[]
  readonly cells: readonly { readonly box: Bounds; readonly page: number }[]
}

/** The map of a tiled drawing, as its pages lie; `pages` are the numbers of the tiles' pages. */
export function pageMapOf(
  { marks, bounds }: Drawing,
  { tiles, turned }: Tiling,
  pages: readonly number[],
): PageMap {
  const laid = quarterTurns(turned ? 1 : 0)
  const outline = marks.flatMap(mark =>
    mark.kind === 'path' && mark.role === 'cut'
      ? mark.contours.filter(c => isLarge(contourBounds(c), bounds))
      : [],
  )
  return {
    outline: outline.map(contour => transformContour(contour, laid)),
    cells: tiles.map(({ cell }, i) => ({ box: transformBounds(cell, laid), page: pages[i]! })),
  }
}

/** What shows where on the drawing one is; holes and slots would only hide the numbers. */
function isLarge(box: Bounds, all: Bounds): boolean {
  return (
    Math.max(box.right - box.left, box.top - box.bottom) >
    Math.max(all.right - all.left, all.top - all.bottom) / 2
  )
}

/** How wide a map of this height is, its numbers with it. */
export function mapWidth({ cells }: PageMap, height: number): number {
  const { left, right, bottom, top } = boundsOf(cells)
  return (height * (right - left)) / (top - bottom) + (hasNumbersBeside(cells) ? besideRoom : 0)
}

/** Pages of a long narrow drawing, one above the other, have no room in them for their numbers. */
function hasNumbersBeside(cells: PageMap['cells']): boolean {
  const { left, right } = boundsOf(cells)
  const shortest = Math.min(...cells.map(({ box }) => box.top - box.bottom))
  const fromBelow = cells.map(({ box }) => box).sort((a, b) => a.bottom - b.bottom)
  const inOneColumn = fromBelow.every((box, i) => i === 0 || box.bottom >= fromBelow[i - 1]!.top - coincident)
  return inOneColumn && right - left < narrowShare * shortest
}

/** A page narrower than this share of its height has its number beside it. */
const narrowShare = 1
/** Room for a number of three figures, and white between it and its page. */
const besideRoom = 7
const besideAside = 1.2

/** A map needs no more of the paper than this share of the drawing. */
const largestScale = 1 / 4

const belongs = { layer: 'paper', subject: 'page-map' } as const

/** Draws a map into the upper right of a box; the page at hand stands out by a heavy frame and a bold number. */
export function pageMapMarks(map: PageMap, into: Bounds, here?: number): readonly Mark[] {
  const whole = boundsOf(map.cells)
  const half = lineStyles.wide.width / 2
  const beside = hasNumbersBeside(map.cells)
  const factor = Math.min(
    (into.right - into.left - 2 * half - (beside ? besideRoom : 0)) / (whole.right - whole.left),
    (into.top - into.bottom - 2 * half) / (whole.top - whole.bottom),
    largestScale,
  )
  const toPage = compose(
    compose(shift(-whole.right, -whole.top), scale(factor)),
    shift(into.right - half, into.top - half),
  )
  const cells = map.cells.map(({ box, page }) => ({
    box: shiftBounds(scaleBounds(box, factor), toPage.e, toPage.f),
    page,
  }))
  const height = numberHeight(cells, beside)
  const numbered = height >= smallestNumber
  const outline = map.outline.map(contour => transformContour(contour, toPage))
  const hidden = numbered && !beside ? cells.map(cell => numberRoom(cell, height)) : []
  const frames = (list: typeof cells, role: 'thin' | 'wide'): readonly Mark[] =>
    list.length === 0
      ? []
      : [
          pathMark(
            belongs,
            role,
            list.map(({ box }) => rectangle(box).outer),
          ),
        ]
  return [
    frames(cells, 'thin'),
    frames(
      cells.filter(({ page }) => page === here),
      'wide',
    ),
    [
      pathMark(
        belongs,
        'thin',
        clipPaths(outline, hidden).flatMap(({ outside }) => outside),
      ),
    ],
    !numbered
      ? []
      : cells.map(({ box, page }) =>
          textMark(
            belongs,
            [`${page}`],
            {
              x: beside ? box.left - besideAside : (box.left + box.right) / 2,
              y: (box.bottom + box.top - height) / 2,
            },
            height,
            { align: beside ? 'end' : 'middle', weight: page === here ? 'bold' : 'regular' },
          ),
        ),
  ].flat()
}

/** As large as the lowest page, and the narrowest where numbers stand in them, has room for. */
function numberHeight(cells: PageMap['cells'], beside: boolean): number {
  const digits = Math.max(2, ...cells.map(({ page }) => digitsOf(page)))
  const lowest = Math.min(...cells.map(({ box }) => box.top - box.bottom))
  const narrowest = beside ? Infinity : Math.min(...cells.map(({ box }) => box.right - box.left))
  return Math.min(lettering.medium, lowest / 1.7, narrowest / (digits * digitWidth))
}

const digitsOf = (page: number): number => `${page}`.length

/** How wide a figure is in heights, white included. */
const digitWidth = 1.1

/** What a number in the middle of a page takes: lines of the drawing leave it out. */
function numberRoom({ box, page }: PageMap['cells'][number], height: number): Region {
  const { x, y } = middleOfBounds(box)
  const aside = (digitsOf(page) * digitWidth * height) / 2
  const above = (height * digitWidth) / 2 + lineStyles.thin.width
  return rectangle({ left: x - aside, right: x + aside, bottom: y - above, top: y + above })
}

/** Smaller figures cannot be read; then the map shows the place alone. */
const smallestNumber = 1.2

function boundsOf(cells: PageMap['cells']): Bounds {
  return joinAllBounds(cells.map(({ box }) => box))
}
