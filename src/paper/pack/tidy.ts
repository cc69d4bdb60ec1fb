import type { FilledPage, Rooms, StartedPage } from './fill.ts'
import type { FreeSpace } from './free-space.ts'
import { area, type Item, type Spot, type Wanted } from './item.ts'
import { openRoom, type PlaceOptions, placeAll } from './place.ts'

/** What was packed: items, what they want of a page, the rooms that pages have, and the white between items. */
export type Packed = {
  readonly items: readonly Item[]
  readonly wanted: readonly (readonly Wanted[])[]
  readonly rooms: Rooms
  readonly gap: number
}

/**
 * The same items on one page, as few of them turned as can be, then as many as can be in their best shapes: what was
 * turned and narrowed to find a page needs not stay so once the page is found.
 */
export function tidied(
  page: FilledPage,
  started: StartedPage | undefined,
  { items, wanted, rooms, gap }: Packed,
): FilledPage {
  const spaces: readonly { readonly room?: number; readonly open: () => FreeSpace }[] =
    started === undefined
      ? rooms.map((extent, room) => ({ room, open: () => openRoom(extent, gap) }))
      : [{ open: () => openRoom(started.room, gap, started.taken) }]
  let best = { page, costs: costsOf(page, items) }
  for (const { room, open } of spaces) {
    for (const how of ways) {
      for (const order of ordersOf(page.spots, items)) {
        const spots = placeAll(wanted, order, open(), how)
        if (spots === undefined) continue
        const again = room === undefined ? { spots } : { room, spots }
        const costs = costsOf(again, items)
        if (isLess(costs, best.costs)) best = { page: again, costs }
      }
    }
  }
  return best.page
}

const ways: readonly PlaceOptions[] = [
  { rule: 'uppermost', turning: 'never', shapes: 'first' },
  { rule: 'uppermost', turning: 'never', shapes: 'any' },
  { rule: 'least-left', turning: 'never', shapes: 'any' },
  { rule: 'uppermost', turning: 'late', shapes: 'any' },
  { rule: 'least-left', turning: 'late', shapes: 'any' },
]

/** Their own order, the large before the small, and those turned now first, while there is room to lay them upright. */
function ordersOf(spots: readonly Spot[], items: readonly Item[]): readonly (readonly number[])[] {
  const inOrder = spots.toSorted((a, b) => a.item - b.item)
  const size = ({ item }: Spot): number => area(items[item]!.shapes[0]!)
  const bySize = inOrder.toSorted((a, b) => size(b) - size(a))
  const turnedFirst = bySize.toSorted((a, b) => Number(b.turned) - Number(a.turned))
  return [inOrder, bySize, turnedFirst].map(order => order.map(({ item }) => item))
}

/** How many are turned, how many have another shape than their best, which way the paper lies, and whether it is in disorder. */
function costsOf({ room = 0, spots }: FilledPage, items: readonly Item[]): readonly number[] {
  const turned = spots.filter(spot => spot.turned)
  const narrowed = spots.filter(({ shape, item }) => shape > 0 && items[item]!.shapes.length > 1)
  const outOfOrder = spots.filter(({ item }, i) => i > 0 && item < spots[i - 1]!.item)
  return [turned.length, narrowed.length, room, outOfOrder.length]
}

function isLess(a: readonly number[], b: readonly number[]): boolean {
  const differs = a.findIndex((value, i) => value !== b[i])
  return differs >= 0 && a[differs]! < b[differs]!
}
