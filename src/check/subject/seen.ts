import type { Placed } from '../../model/feature.ts'
import { woodBetween } from '../wood/apart.ts'
import { areSeenTogether, type Cut } from './cut.ts'
import type { Plane } from './plane.ts'

/**
 * What the rules see that look at one face at a time, so that the inside of the wood says nothing again: by the
 * feature, the plane it is cut into and what it takes away there.
 */
export type Seen = ReadonlyMap<Placed, { readonly plane: Plane; readonly cut: Cut }>

export function seenOn(planes: readonly Plane[]): Seen {
  return new Map(planes.flatMap(plane => plane.cuts.map(cut => [cut.feature, { plane, cut }] as const)))
}

/** The wood between two cuts as one face shows it, in millimetres; nothing where none shows both together. */
export function woodSeenBetween(seen: Seen, a: Placed, b: Placed): number | undefined {
  const [first, second] = [seen.get(a), seen.get(b)]
  if (first === undefined || second === undefined || first.plane !== second.plane) return undefined
  return areSeenTogether(first.cut, second.cut) ? woodBetween(first.cut, second.cut) : undefined
}

/** Whether a cut sticks out of its face. */
export function isSeenOutside(seen: Seen, feature: Placed): boolean {
  const found = seen.get(feature)
  return found?.plane.out.has(found.cut) ?? false
}
