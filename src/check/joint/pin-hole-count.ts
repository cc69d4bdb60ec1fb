import type { FindingOf } from '../../finding/finding.ts'
import { count } from '../place.ts'
import { noLimit, type Rule } from '../rule.ts'
import { pinJoints, placesOf } from './holes.ts'

/** A row of holes that is pinned to a row of more or fewer. */
export const pinHoleCount: Rule<'pin-hole-count'> = {
  find: subject =>
    pinJoints(subject).flatMap(({ pin, through }) => {
      const [first, ...others] = through.filter(holes => holes.length > 0)
      return others.flatMap((holes): FindingOf<'pin-hole-count'>[] => {
        if (first === undefined || holes.length === first.length) return []
        return [
          {
            rule: 'pin-hole-count',
            severity: 'error',
            places: [...placesOf(holes[0]!), placesOf(first[0]!)[1]!],
            measured: count(holes.length),
            limit: count(first.length),
            facts: { pin: pin.id, count: count(holes.length), other: count(first.length) },
          },
        ]
      })
    }),
  explanation: {
    purpose: 'Two rows that are pinned together have as many holes each, or a pin finds none.',
    limit: noLimit,
    origin: 'the plan itself',
  },
}
