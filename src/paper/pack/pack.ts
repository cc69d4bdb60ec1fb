import { attempts } from './attempts.ts'
import { type FilledPage, fill, type Rooms, type StartedPage } from './fill.ts'
import { area, grownBy, type Item, smallest, wantedBy } from './item.ts'
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
  const wanted = wantedBy(items, gap)
  let best: Result | undefined
  for (const how of attempts(items, rooms)) {
    const filled = fill(items, how.groups, rooms, { gap, wanted, started, ...how })
    const otherRooms = filled.filter(({ room = 0 }) => room > 0).length
    const result = { pages: filled, split: splitGroups(items, filled), otherRooms }
    if (best === undefined || isBetter(result, best)) best = result
    if (best.pages.length === areaBound && best.split === 0 && best.otherRooms === 0) break
  }
  const pages = (best?.pages ?? []).map((page, i) => tidied(page, started[i], { items, wanted, rooms, gap }))
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

/** Fewer pages, then fewer torn groups, then fewer pages that lie another way. */
function isBetter(a: Result, b: Result): boolean {
  if (a.pages.length !== b.pages.length) return a.pages.length < b.pages.length
  return a.split !== b.split ? a.split < b.split : a.otherRooms < b.otherRooms
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
