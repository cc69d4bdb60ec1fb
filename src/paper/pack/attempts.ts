import type { FillOptions, Rooms } from './fill.ts'
import type { Rule } from './free-space.ts'
import { area, type Extent, type Item, smallest } from './item.ts'

/** One way to fill pages: in which order, with which rooms first, whether groups are kept on one page, and by which rule. */
export type Attempt = Pick<FillOptions, 'rooms' | 'together' | 'rule'> & {
  readonly groups: readonly (readonly number[])[]
}

/** In a packet of more items a few orders come as near to the bound as all do. */
const manyItems = 200

/** Orders to try, the plan's own first; then the large before the small, by several measures of what is large. */
export function attempts(items: readonly Item[], rooms: Rooms): readonly Attempt[] {
  const groups = groupsOf(items)
  const all = items.map((_, i) => i)
  const few = items.length > manyItems
  const rules: readonly Rule[] = few ? ['least-left'] : ['least-left', 'uppermost']
  const largestFirst = sizes.slice(0, few ? 2 : sizes.length).map(size => {
    const of = items.map(({ shapes }) => size(smallest(shapes)))
    return (a: number, b: number): number => of[b]! - of[a]! || a - b
  })
  const orders = [
    { groups, together: true },
    ...largestFirst.flatMap(by => [
      { groups: groups.map(members => members.toSorted(by)).sort(([a], [b]) => by(a!, b!)), together: true },
      { groups: all.toSorted(by).map(i => [i]), together: false },
    ]),
  ]
  return firstRooms(rooms).flatMap(order =>
    rules.flatMap(rule => orders.map(how => ({ ...how, rooms: order, rule }))),
  )
}

/** What makes an item large. */
const sizes: readonly ((extent: Extent) => number)[] = [
  area,
  ({ width, height }) => Math.max(width, height),
  ({ width, height }) => Math.min(width, height),
  ({ width, height }) => width + height,
]

/** Every room once before the others. */
function firstRooms(rooms: Rooms): readonly (readonly number[])[] {
  const all = rooms.map((_, i) => i)
  return all.map(first => [first, ...all.filter(i => i !== first)])
}

function groupsOf(items: readonly Item[]): readonly (readonly number[])[] {
  const groups = new Map<string, number[]>()
  items.forEach(({ group }, i) => {
    const members = groups.get(group)
    if (members === undefined) groups.set(group, [i])
    else members.push(i)
  })
  return [...groups.values()]
}
