import { midpoint3 } from '../../geometry/solid/point3.ts'
import { count, mm } from '../place.ts'
import type { Rule } from '../rule.ts'
import { isBored } from '../subject/is-bored.ts'
import { worstOfEach } from '../worst-of-each.ts'
import { landsOn } from './lands-on.ts'
import { pairKey } from './pair-key.ts'
import { depthPlace, placeAbove } from './spot.ts'

/** Two holes that run into each other inside the wood, from whatever faces. */
export const holesMeetInside: Rule<'holes-meet-inside'> = {
  find: ({ parts }) =>
    parts.flatMap(({ part, inside }) => {
      const meeting = inside.encounters.filter(
        e => e.distance === 0 && isBored(e.second) && landsOn(e) === undefined,
      )
      return worstOfEach(meeting, pairKey, ({ overlap }) => overlap).map(({ worst, count: alike }) => {
        const { first, second, places } = worst
        const at = midpoint3(...places)
        return {
          rule: 'holes-meet-inside',
          severity: 'error',
          places: [placeAbove(part, first.feature, at), placeAbove(part, second.feature, at)],
          measured: mm(worst.overlap),
          limit: mm(0),
          facts: { ...depthPlace(part, at), count: count(alike) },
        }
      })
    }),
  explanation: {
    purpose:
      'A block with holes on several faces hides where they meet. The second bit wanders into the first hole, and a pin that goes in later stops at the one across. A narrow hole down the middle of a wide one, or two that meet end to end, is left alone.',
    limit: () => 'no hole reaches into another, the points of the bits included',
    origin:
      'true distances between the bodies that the bits take away, by the algorithm of Gilbert, Johnson and Keerthi, within a millionth of a millimetre',
  },
}
