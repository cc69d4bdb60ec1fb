import type { FreeSpace, Rule } from './free-space.ts'
import { area, type Extent, type Item, type Spot, type Wanted } from './item.ts'
import { openRoom, placeAll } from './place.ts'

/** The free space of a page, one entry for each way that the paper can lie. */
export type Rooms = readonly Extent[]

/** A page that something lies on already, in the upper left corner of its free space; its group has the first claim to the rest. */
export type StartedPage = { readonly room: Extent; readonly taken: Extent; readonly group?: string }

/** A page as it was filled; `room` is that of a new page by its number, absent for one that was started. */
export type FilledPage = { readonly room?: number; readonly spots: readonly Spot[] }

export type FillOptions = {
  /** White between one item and the next. */
  readonly gap: number
  /** What each item wants of a page. */
  readonly wanted: readonly (readonly Wanted[])[]
  readonly started: readonly StartedPage[]
  /** Which rooms a new page may have, the one to try first before the others. */
  readonly rooms: readonly number[]
  /** Whether a group goes on one page where it can. */
  readonly together: boolean
  readonly rule: Rule
}

/**
 * So many pages are asked whether they have a place; then the fullest is asked no more, so that time grows with the
 * number of items and not with its square. Fewer, and a large packet takes more paper.
 */
const mostOpen = 40

/**
 * Puts groups of items on pages in the order given, each on the first page that has a place for it, and on a new
 * one where none has. The pages that were started come first.
 *
 * @throws RangeError when an item fits no room: a fault of the caller
 */
export function fill(
  items: readonly Item[],
  groups: readonly (readonly number[])[],
  rooms: Rooms,
  { gap, wanted: shapes, started, rooms: allowed, together, rule }: FillOptions,
): readonly FilledPage[] {
  type OpenPage = { readonly room?: number; readonly spots: Spot[]; free: FreeSpace }
  const pages = started.map(({ room, taken }): OpenPage => ({ spots: [], free: openRoom(room, gap, taken) }))
  const open = [...pages]
  const ownPages = new Map<string, OpenPage[]>()
  started.forEach(({ group }, i) => {
    if (group === undefined) return
    const own = ownPages.get(group)
    if (own === undefined) ownPages.set(group, [pages[i]!])
    else own.push(pages[i]!)
  })
  const areas = shapes.map(([smallest]) => area(smallest!))

  /** All of the items on this page, or none; `wanted` is what their areas come to. */
  const putOn = (page: OpenPage, members: readonly number[], wanted: number): boolean => {
    if (wanted > page.free.area()) return false
    // a single item spoils nothing where it finds no place
    const free = members.length === 1 ? page.free : page.free.copy()
    const spots = placeAll(shapes, members, free, { rule, turning: 'freely', shapes: 'any' })
    if (spots === undefined) return false
    page.free = free
    page.spots.push(...spots)
    return true
  }
  const put = (members: readonly number[]): boolean => {
    const own = ownPages.get(items[members[0]!]!.group) ?? []
    const wanted = members.reduce((sum, i) => sum + areas[i]!, 0)
    const takes = (page: OpenPage): boolean => putOn(page, members, wanted)
    if (own.some(takes) || open.some(takes)) return true
    for (const room of allowed) {
      const page: OpenPage = { room, spots: [], free: openRoom(rooms[room]!, gap) }
      if (!takes(page)) continue
      pages.push(page)
      open.push(page)
      if (open.length > mostOpen) close(open)
      return true
    }
    return false
  }
  for (const members of groups) {
    if (together && put(members)) continue
    for (const index of members) if (!put([index])) throw new RangeError('an item fits on no page')
  }
  return pages.map(({ room, spots }) => (room === undefined ? { spots } : { room, spots }))
}

function close(open: { readonly free: FreeSpace }[]): void {
  const fullest = open.reduce(
    (least, page, i) => (page.free.area() < open[least]!.free.area() ? i : least),
    0,
  )
  open.splice(fullest, 1)
}
