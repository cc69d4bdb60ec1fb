import type { FilledPage, Rooms, StartedPage } from './fill.ts'
import { area, type Item } from './item.ts'
import { openRoom, placeAll } from './place.ts'

/**
 * The same items on one page in their own order, and where they all fit so upright and in their best shapes: what
 * was turned and narrowed to find a page needs not stay so once the page is found.
 */
export function tidied(
  page: FilledPage,
  started: StartedPage | undefined,
  items: readonly Item[],
  rooms: Rooms,
  gap: number,
): FilledPage {
  const inOrder = page.spots.map(({ item }) => item).sort((a, b) => a - b)
  const best = (i: number): number => area(items[i]!.shapes[0]!)
  const orders = [inOrder, inOrder.toSorted((a, b) => best(b) - best(a) || a - b)]
  const earlier = started === undefined ? rooms.map((_, i) => i).filter(i => i < page.room) : []
  for (const freely of [false, true]) {
    for (const room of [...earlier, page.room]) {
      for (const order of orders) {
        const spots = placeAll(items, order, openRoom(rooms[room]!, gap, started?.taken), {
          gap,
          freely,
          rule: 'uppermost',
        })
        if (spots !== undefined) return { room, spots }
      }
    }
  }
  return page
}
