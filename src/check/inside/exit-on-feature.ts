import { midpoint3 } from '../../geometry/solid/point3.ts'
import { count, mm, wordFor } from '../place.ts'
import type { Rule } from '../rule.ts'
import { worstOfEach } from '../worst-of-each.ts'
import { landsOn } from './lands-on.ts'
import { pairKey } from './pair-key.ts'
import { depthPlace, placeAbove } from './spot.ts'

/** A hole that goes through and comes out on another cut. */
export const exitOnFeature: Rule<'exit-on-feature'> = {
  find: ({ parts }) =>
    parts.flatMap(({ part, inside }) => {
      const landed = inside.encounters.flatMap(encounter => {
        const landing = encounter.distance === 0 ? landsOn(encounter) : undefined
        return landing === undefined ? [] : [{ encounter, landing }]
      })
      return worstOfEach(
        landed,
        ({ encounter }) => pairKey(encounter),
        ({ encounter }) => encounter.overlap,
      ).map(({ worst: { encounter, landing }, count: alike }) => {
        const at = midpoint3(...encounter.places)
        return {
          rule: 'exit-on-feature',
          severity: 'error',
          places: [placeAbove(part, landing.bored.feature, at), placeAbove(part, landing.on.feature, at)],
          measured: mm(encounter.overlap),
          limit: mm(0),
          facts: {
            ...depthPlace(part, at),
            other: wordFor(landing.on.feature),
            face: landing.wall.name,
            count: count(alike),
          },
        }
      })
    }),
  explanation: {
    purpose:
      'A through hole comes out on a face that nobody looks at while boring. Where another cut is there, its rim is torn, and what goes in there no longer fits.',
    limit: () =>
      'no hole comes out on another cut; one that is bored from both ends, or in steps, is left alone',
    origin: 'true ellipses where the holes leave and enter the wood',
  },
}
