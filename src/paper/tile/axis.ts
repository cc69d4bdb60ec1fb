import { coincident } from '../../number/tolerance.ts'
import { harmsOf, type Spared } from './harm.ts'
import { risingCounts } from './rising.ts'

/** One direction of a drawing that is to be cut into tiles: how far the drawing goes, and how much a page holds. */
export type Axis = {
  readonly from: number
  readonly to: number
  /** The length of a page's free space. */
  readonly reach: number
  /** What two neighbours both show. The seam is in its middle. */
  readonly overlap: number
}

/** Whether a page holds all of an axis, so that it needs no seam. */
export function isWhole({ from, to, reach }: Axis): boolean {
  return to - from <= reach + coincident
}

/** Where an axis is cut: its own ends and the seams between them, ascending. */
export type Stops = readonly number[]

/** Stops with what they cost, each figure of weight only where those before it are equal. */
export type CutAxis = {
  readonly stops: Stops
  readonly pages: number
  readonly harm: number
}

/** From where on a tile that begins at a stop shows the drawing: from half of the overlap before a seam. */
export function shownFrom(stop: number, axis: Axis): number {
  return stop > axis.from ? stop - axis.overlap / 2 : stop
}

/** How far a tile that ends at a stop shows the drawing: half of the overlap beyond a seam. */
export function shownTo(stop: number, axis: Axis): number {
  return stop < axis.to ? stop + axis.overlap / 2 : stop
}

/** Positions that are tried for seams; more make large drawings slow and find nothing better. */
const mostCandidates = 128

/** What tiles cost: the one between two stops 0 where it has nothing to show, a wider one never less, and none more than `most`. */
export type PagesBetween = {
  readonly count: (from: number, to: number) => number
  readonly most: number
}

/** Cuts an axis so that the tiles cost the fewest pages, then the seams do the least harm, then the tiles are alike. */
export function cutAxis(axis: Axis, spared: readonly Spared[], pagesBetween: PagesBetween): CutAxis {
  const harmAt = harmsOf(spared)
  const stops = [axis.from, ...candidates(axis, spared, harmAt), axis.to]
  const harms = stops.map((at, i) => (i === 0 || i === stops.length - 1 ? 0 : harmAt(at)))
  const best: (Way | undefined)[] = [{ pages: 0, harm: 0, tiles: 0, uneven: 0, before: -1 }]
  for (let j = 1; j < stops.length; j++) {
    const to = stops[j]!
    const begins = beginsOf(axis, stops, j).filter(i => best[i] !== undefined)
    const pages = risingCounts(begins, i => pagesBetween.count(stops[i]!, to), pagesBetween.most)
    let chosen: Way | undefined
    // from the farthest back: the nearer a stop, the more pages lead to it, and of equals the nearest is taken
    for (let k = begins.length - 1; k >= 0; k--) {
      const i = begins[k]!
      const way = best[i]!
      if (chosen !== undefined && way.pages > chosen.pages) break
      const toPages = way.pages + pages[k]!
      const toHarm = way.harm + harms[j]!
      const tiles = way.tiles + 1
      const uneven = way.uneven + (to - stops[i]!) ** 2
      if (
        chosen === undefined ||
        (toPages - chosen.pages || toHarm - chosen.harm || tiles - chosen.tiles || uneven - chosen.uneven) <=
          0
      )
        chosen = { pages: toPages, harm: toHarm, tiles, uneven, before: i }
    }
    if (chosen !== undefined) best[j] = chosen
  }
  const last = best.at(-1)
  if (last === undefined || best.length < stops.length) throw new RangeError('a page reaches nowhere')
  return { stops: wayBack(best, stops), pages: last.pages, harm: last.harm }
}

/** The stops that a tile which ends at stop `end` may begin at, each farther back: a page shows all between. */
function beginsOf(axis: Axis, stops: Stops, end: number): readonly number[] {
  const to = stops[end]!
  const high = shownTo(to, axis)
  const begins: number[] = []
  for (let i = end - 1; i >= 0 && to - stops[i]! <= axis.reach + coincident; i--) {
    if (high - shownFrom(stops[i]!, axis) <= axis.reach + coincident) begins.push(i)
  }
  return begins
}

/** The best way to a stop; each figure counts only where those before it are equal. */
type Way = {
  readonly pages: number
  readonly harm: number
  readonly tiles: number
  readonly uneven: number
  readonly before: number
}

function wayBack(best: readonly (Way | undefined)[], stops: Stops): Stops {
  const way: number[] = []
  for (let i = stops.length - 1; i >= 0; i = best[i]!.before) way.unshift(stops[i]!)
  return way
}

/**
 * Where a seam may lie: at either side of everything that is to be spared, where full pages end, counted from both
 * ends and from those places, and evenly between. Where there are too many, the least harmful ones near each other
 * stand for the rest.
 */
function candidates(
  axis: Axis,
  spared: readonly Spared[],
  harmAt: (at: number) => number,
): readonly number[] {
  if (isWhole(axis)) return []
  const { from, to, reach, overlap } = axis
  const pitch = reach - overlap
  if (!(pitch > overlap)) throw new RangeError('a page is smaller than the overlap of two')
  const fewest = Math.ceil((to - from - overlap) / pitch)
  const steps = Array.from({ length: fewest }, (_, k) => reach - overlap / 2 + k * pitch)
  const sides = spared.flatMap(({ low, high }) => [low, high])
  const needed = [...steps.map(s => from + s), ...steps.map(s => to - s)]
  const even = steps.map((_, k) => from + ((k + 1) * (to - from)) / fewest)
  const offered = [...sides, ...even, ...sides.flatMap(side => [side - pitch, side + pitch])]
  // a tile as narrow as the overlap would show nothing of its own
  const inside = (at: number): boolean => at > from + overlap && at < to - overlap
  const all = [...new Set([...needed, ...thinned(offered.filter(inside), harmAt)])]
  return all.filter(inside).sort((a, b) => a - b)
}

function thinned(positions: readonly number[], harmAt: (at: number) => number): readonly number[] {
  if (positions.length <= mostCandidates) return positions
  const [low, high] = [Math.min(...positions), Math.max(...positions)]
  const cells = new Map<number, { at: number; harm: number }>()
  for (const at of new Set(positions)) {
    const cell = Math.floor(((at - low) / (high - low)) * mostCandidates)
    const harm = harmAt(at)
    const known = cells.get(cell)
    if (known === undefined || harm < known.harm || (harm === known.harm && at < known.at))
      cells.set(cell, { at, harm })
  }
  return [...cells.values()].map(({ at }) => at)
}
