import type { Bounds } from '../../geometry/shape/contour.ts'
import { coincident } from '../../number/tolerance.ts'
import { type Axis, type CutAxis, cutAxis, type Stops, shownFrom, shownTo } from './axis.ts'
import type { Spared } from './harm.ts'
import { overDiagonal } from './over-diagonal.ts'
import type { Spare, SpareKind } from './spare.ts'

/** A drawing cut into rows, from the lowest up, and each row by itself into columns, from the left. */
export type Grid = {
  readonly rows: readonly { readonly bottom: number; readonly top: number; readonly columns: Stops }[]
  readonly pages: number
  /** What the seams that can spare nothing better cost, by the weights of what they cross. */
  readonly harm: number
}

/** One hole outweighs any number of ends that a drawing may have, and one end any number of labels. */
const harms: Readonly<Record<SpareKind, number>> = { hole: 1e8, end: 1e4, label: 1 }

/** Whether fewer pages, or as many with less harm. */
function isBetter(a: Pick<Grid, 'pages' | 'harm'>, b: Pick<Grid, 'pages' | 'harm'>): boolean {
  return a.pages !== b.pages ? a.pages < b.pages : a.harm < b.harm
}

/**
 * Cuts what is in `content` into the fewest pages, its rows independent of each other, so that a row is no longer than
 * what it shows. Blank tiles cost nothing.
 *
 * @returns nothing where the grid is no better than one that is known, as some of its rows may show already
 */
export function chooseGrid(
  content: readonly Bounds[],
  spares: readonly Spare[],
  across: Axis,
  along: Axis,
  known?: Grid,
): Grid | undefined {
  const fromLeft = content.toSorted((a, b) => a.left - b.left)
  const inRow = (from: number, to: number): readonly Bounds[] => {
    const [low, high] = [shownFrom(from, along), shownTo(to, along)]
    return fromLeft.filter(box => box.bottom <= high && box.top >= low)
  }
  const rows = cutAxis(
    along,
    spares.map(({ kind, box }) => ({ low: box.bottom, high: box.top, harm: harms[kind] })),
    { count: (from, to) => fewestTiles(inRow(from, to), across), most: fewestTiles(fromLeft, across) },
  )
  // no row has fewer pages than were counted for it, and its seams do harm besides
  let { pages, harm } = rows
  const isLost = (): boolean => known !== undefined && !isBetter({ pages, harm }, known)
  const cut: Grid['rows'][number][] = []
  for (let i = 0; i + 1 < rows.stops.length; i++) {
    if (isLost()) return undefined
    const [bottom, top] = [rows.stops[i]!, rows.stops[i + 1]!]
    const boxes = inRow(bottom, top)
    const row = cutRow(boxes, sparedIn(spares, bottom, top), across)
    pages += row.pages - fewestTiles(boxes, across)
    harm += row.harm
    cut.push({ bottom, top, columns: row.stops })
  }
  return isLost() ? undefined : { rows: cut, pages, harm }
}

/** A row is cut only as far as it shows something. */
function cutRow(boxes: readonly Bounds[], spared: readonly Spared[], across: Axis): CutAxis {
  const from = Math.max(across.from, Math.min(...boxes.map(box => box.left)))
  const to = Math.min(across.to, Math.max(...boxes.map(box => box.right)))
  if (!(to > from)) return { stops: [], pages: 0, harm: 0 }
  const axis = { ...across, from, to }
  const stretches = stretchesOf(boxes)
  const count = (low: number, high: number): number => {
    const [first, last] = [shownFrom(low, axis), shownTo(high, axis)]
    return stretches.some(({ left, right }) => left <= last && right >= first) ? 1 : 0
  }
  return cutAxis(axis, spared, { count, most: 1 })
}

/** Where there is anything at all; boxes that come from the left become the few stretches that they fill. */
function stretchesOf(boxes: readonly Bounds[]): readonly { readonly left: number; readonly right: number }[] {
  const stretches: { left: number; right: number }[] = []
  for (const { left, right } of boxes) {
    const last = stretches.at(-1)
    if (last !== undefined && left <= last.right) last.right = Math.max(last.right, right)
    else stretches.push({ left, right })
  }
  return stretches
}

function sparedIn(spares: readonly Spare[], bottom: number, top: number): readonly Spared[] {
  return spares
    .filter(({ box }) => box.bottom < top && box.top > bottom)
    .map(({ kind, box }) => ({ low: box.left, high: box.right, harm: harms[kind] }))
}

/** No way to cut what is in `content` has fewer pages than this: each direction by itself wants as many. */
export function fewestPages(content: readonly Bounds[]): (across: Axis, along: Axis) => number {
  const fromLeft = content.toSorted((a, b) => a.left - b.left)
  const fromBottom = content.map(overDiagonal).sort((a, b) => a.left - b.left)
  return (across, along) => Math.max(fewestTiles(fromLeft, across), fewestTiles(fromBottom, along))
}

/** How many tiles show all of some boxes, which come from the left; laid without regard to what their seams cross. */
function fewestTiles(boxes: readonly Bounds[], { reach, overlap }: Axis): number {
  let count = 0
  let shown = -Infinity
  for (const { left, right } of boxes) {
    while (right > shown + coincident) {
      shown = Math.max(left, shown - overlap) + reach
      count++
    }
  }
  return count
}
