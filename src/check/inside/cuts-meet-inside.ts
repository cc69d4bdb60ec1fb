import { midpoint3 } from '../../geometry/solid/point3.ts'
import { count, mm, wordFor } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'
import { worstOfEach } from '../worst-of-each.ts'
import { pairKey } from './pair-key.ts'
import { depthPlace, placeAbove } from './spot.ts'

/** Two slots, grooves or rebates of different faces that run into each other inside the wood. */
export const cutsMeetInside: Rule<'cuts-meet-inside'> = {
  find: ({ parts }) =>
    parts.flatMap(({ part, inside }) => {
      const meeting = inside.hollowsNear.filter(({ distance }) => distance === 0)
      return worstOfEach(meeting, pairKey, ({ overlap }) => overlap).map(({ worst, count: alike }) => {
        const { first, second, overlap, places } = worst
        const at = midpoint3(...places)
        return {
          rule: 'cuts-meet-inside',
          severity: 'note',
          places: [placeAbove(part, first.feature, at), placeAbove(part, second.feature, at)],
          measured: mm(overlap),
          limit: mm(0),
          facts: {
            ...depthPlace(part, at),
            what: wordFor(first.feature),
            other: wordFor(second.feature),
            count: count(alike),
          },
        }
      })
    }),
  explanation: {
    purpose:
      'Mortises in two faces of a post meet when both are deep: then the tenons want mitred ends, or one of them stops the other. Where it is not meant so, one of the two is too deep or in the wrong place.',
    limit: () =>
      'no slot reaches into a slot, groove or rebate of another face; grooves and rebates may run into each other where they cross',
    origin: `true distances between the bodies that are cut away; ${commonPractice}`,
  },
}
