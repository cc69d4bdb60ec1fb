import type { Placed } from '../../model/feature.ts'
import type { KeyEntry } from '../key/key-entry.ts'

/** The letters of a key that stand on one face, each with what bears it there. */
export function entriesOn(own: readonly Placed[], key: readonly KeyEntry[]): readonly KeyEntry[] {
  const here = new Map(own.map(feature => [feature.id, feature]))
  return key.flatMap(({ letter, members }): KeyEntry[] => {
    const [first, ...others] = members.flatMap(({ id }) => here.get(id) ?? [])
    return first === undefined ? [] : [{ letter, members: [first, ...others] }]
  })
}
