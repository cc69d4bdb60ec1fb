import { better, type FreeSpace, freeSpace, type Place, type Rule } from './free-space.ts'
import { asItLies, type Extent, grownBy, type Spot, type Wanted } from './item.ts'

/** The free space of a page: all of a room, but what lies in its upper left corner already. */
export function openRoom(room: Extent, gap: number, taken?: Extent): FreeSpace {
  // a gap is kept by letting everything take it at its right and below, and the room have it there once more
  const free = freeSpace(grownBy(room, gap))
  if (taken !== undefined) free.take({ x: 0, y: 0, ...grownBy(taken, gap) })
  return free
}

export type PlaceOptions = {
  readonly rule: Rule
  /** Whether items are turned: never, where they have no place otherwise, or wherever they fit better so. */
  readonly turning: 'never' | 'late' | 'freely'
  /** Whether they may have another shape than their first. */
  readonly shapes: 'first' | 'any'
}

/** Takes a place for each of some items, by what each wants; nothing where one of them has none, and the space is then spoilt. */
export function placeAll(
  wanted: readonly (readonly Wanted[])[],
  members: readonly number[],
  free: FreeSpace,
  options: PlaceOptions,
): readonly Spot[] | undefined {
  const spots: Spot[] = []
  for (const index of members) {
    const spot = placeOne(wanted[index]!, index, free, options)
    if (spot === undefined) return undefined
    spots.push(spot)
  }
  return spots
}

/** Takes the best place for an item: that of its smallest shape that has one. */
function placeOne(
  shapes: readonly Wanted[],
  index: number,
  free: FreeSpace,
  { rule, turning, shapes: allowed }: PlaceOptions,
): Spot | undefined {
  for (const turns of waysToTurn[turning]) {
    for (const wanted of shapes) {
      const { shape } = wanted
      if ((allowed === 'first' && shape > 0) || !free.mayHold(wanted)) continue
      const found = bestPlace(wanted, turns, free, rule)
      if (found === undefined) continue
      const { box } = found.place
      free.take(box)
      return { item: index, shape, turned: found.turned, x: box.x, y: box.y }
    }
  }
  return undefined
}

/** What is tried first, and what when that has no place. */
const waysToTurn: Readonly<Record<PlaceOptions['turning'], readonly (readonly boolean[])[]>> = {
  never: [[false]],
  late: [[false], [true]],
  freely: [[false, true]],
}

function bestPlace(
  wanted: Extent,
  turns: readonly boolean[],
  free: FreeSpace,
  rule: Rule,
): { readonly place: Place; readonly turned: boolean } | undefined {
  let best: { place: Place; turned: boolean } | undefined
  for (const turned of turns) {
    const place = free.find(asItLies(wanted, turned), rule)
    if (place !== undefined && (best === undefined || better(place, best.place, rule)))
      best = { place, turned }
  }
  return best
}
