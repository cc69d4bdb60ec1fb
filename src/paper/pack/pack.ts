import { attempts } from './attempts.ts'
import { type FilledPage, fill, type Rooms, type StartedPage } from './fill.ts'
import { area, grownBy, type Item, smallest } from './item.ts'
import { tidied } from './tidy.ts'

export type PackOptions = {
  /** White between one item and the next, to cut along. */
  readonly gap: number
  /** Pages that something lies on already. */
  readonly started?: readonly StartedPage[]
}

export type Packing = {
  /** The pages that were started, in their order, then the others in the order of their first items. */
  readonly pages: readonly FilledPage[]
  /** No packing has fewer pages than this: all areas, gaps with them, over the largest page's. */
  readonly areaBound: number
}

/**
 * Puts items on as few pages as a number of orders find, keeping groups on one page where that costs none. Rooms
 * that come first are taken where they cost no page. Always the same for the same items.
 *
 * @throws RangeError when an item fits no room: a fault of the caller
 */
export function pack(items: readonly Item[], rooms: Rooms, { gap, started = [] }: PackOptions): Packing {
  const areaBound = boundByArea(items, rooms, gap, started)
  const results = attempts(items, rooms).map((how): Result => {
    const pages = fill(items, how.groups, rooms, { gap, started, ...how })
    const otherRooms = pages.filter(({ room = 0 }) => room > 0).length
    return { pages, split: splitGroups(items, pages), otherRooms }
  })
  const pages = best(results).pages.map((page, i) => tidied(page, started[i], items, rooms, gap))
  return {
    pages: [...pages.slice(0, started.length), ...pages.slice(started.length).sort(byFirstItem)],
    areaBound,
  }
}

type Result = {
  readonly pages: readonly FilledPage[]
  readonly split: number
  readonly otherRooms: number
}

/** The fewest pages, then the fewest torn groups, then the fewest pages that lie another way; the first of equals. */
function best(results: readonly Result[]): Result {
  return results.reduce((a, b) => {
    if (a.pages.length !== b.pages.length) return b.pages.length < a.pages.length ? b : a
    if (a.split !== b.split) return b.split < a.split ? b : a
    return b.otherRooms < a.otherRooms ? b : a
  })
}

/** On how many more pages than one the groups lie, all together. */
function splitGroups(items: readonly Item[], pages: readonly FilledPage[]): number {
  const groupsOn = pages.map(({ spots }) => new Set(spots.map(({ item }) => items[item]!.group)).size)
  return groupsOn.reduce((sum, n) => sum + n, 0) - new Set(items.map(({ group }) => group)).size
}

function byFirstItem(a: FilledPage, b: FilledPage): number {
  const first = ({ spots }: FilledPage): number => Math.min(...spots.map(({ item }) => item))
  return first(a) - first(b)
}

/** A share of a page so small that it is rounding. */
const roundingShare = 1e-9

function boundByArea(
  items: readonly Item[],
  rooms: Rooms,
  gap: number,
  started: readonly StartedPage[],
): number {
  const wanted = [...items.map(({ shapes }) => smallest(shapes)), ...started.map(({ taken }) => taken)]
  const total = wanted.reduce((sum, extent) => sum + area(grownBy(extent, gap)), 0)
  const most = Math.max(...rooms.map(room => area(grownBy(room, gap))))
  return Math.max(started.length, Math.ceil(total / most - roundingShare))
}
