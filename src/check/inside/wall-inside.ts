import type { FindingOf } from '../../finding/finding.ts'
import { midpoint3 } from '../../geometry/solid/point3.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Workshop } from '../../workshop/workshop.ts'
import { count, mm, wordFor } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'
import type { Outward } from '../subject/outward.ts'
import type { PartAtHand } from '../subject/subject.ts'
import { clearBesideHole, clearInWords, severityOfThin } from '../wood/limits.ts'
import { worstOfEach } from '../worst-of-each.ts'
import { pairKey } from './pair-key.ts'
import { depthPlace, placeAbove } from './spot.ts'

/** Too little wood inside the part between two cuts, or between a hole and the outside of the part. */
export const wallInside: Rule<'wall-inside'> = {
  find: ({ parts, workshop }) =>
    parts.flatMap(atHand => {
      const { part, inside } = atHand
      const hollows = inside.hollowsNear.map(near => ({
        ...near,
        limit: workshop.wall,
        between: 'beside' as const,
      }))
      const thin = [...inside.encounters, ...hollows].filter(({ distance }) => distance > 0)
      return [
        ...worstOfEach(thin, pairKey, ({ distance, limit }) => 1 - distance / limit).map(
          ({ worst, count: alike }): FindingOf<'wall-inside'> => {
            const at = midpoint3(...worst.places)
            return {
              rule: 'wall-inside',
              severity: severityOfThin(worst.distance, worst.limit, workshop.clear),
              places: [placeAbove(part, worst.first.feature, at), placeAbove(part, worst.second.feature, at)],
              measured: mm(worst.distance),
              limit: mm(worst.limit),
              facts: {
                ...depthPlace(part, at),
                what: wordFor(worst.first.feature),
                other: wordFor(worst.second.feature),
                between: worst.between,
                count: count(alike),
              },
            }
          },
        ),
        ...toOutside(atHand, workshop),
      ]
    }),
  explanation: {
    purpose:
      'Wood that is too thin inside a block breaks through while boring, or splits when a pin is driven in, and nothing shows it before.',
    limit: (workshop, show) =>
      `holes that run beside each other: ${clearInWords(workshop, show)}; where two pass crosswise they are near at one point only, and ${show(workshop.wall)} is enough; before the end of a stopped hole, its point included, ${show(workshop.clear.underPoint)}; between slots, grooves and rebates ${show(workshop.wall)}`,
    origin: commonPractice,
  },
}

/** What is under the end of a stopped hole is the rule of holes that are too deep. */
function toOutside({ part, inside }: PartAtHand, workshop: Workshop): readonly FindingOf<'wall-inside'>[] {
  const thin = inside.outward
    .filter(({ clear, where, ahead }) => clear > 0 && !(where === 'end' && ahead))
    .map(near => ({ near, limit: clearToOutside(near, workshop) }))
    .filter(({ near, limit }) => near.clear < limit - coincident)
  return worstOfEach(
    thin,
    ({ near: { bored, wall } }) => `${bored.feature.cut} ${bored.face.id} ${wall.name}`,
    ({ near, limit }) => 1 - near.clear / limit,
  ).map(({ worst: { near, limit }, count: alike }) => ({
    rule: 'wall-inside',
    severity: severityOfThin(near.clear, limit, workshop.clear),
    places: [
      placeAbove(part, near.bored.feature, near.at),
      ...(near.wall.cut === undefined ? [] : [placeAbove(part, near.wall.cut, near.at)]),
    ],
    measured: mm(near.clear),
    limit: mm(limit),
    facts: {
      ...depthPlace(part, near.at),
      what: wordFor(near.bored.feature),
      other: near.wall.cut === undefined ? near.wall.name : wordFor(near.wall.cut),
      between: near.where === 'end' ? 'before' : 'beside',
      count: count(alike),
    },
  }))
}

/** Under the end of a hole as under every point, else as beside every hole. */
function clearToOutside({ bored, where }: Outward, workshop: Workshop): number {
  return where === 'end' ? workshop.clear.underPoint : clearBesideHole(2 * bored.radius, workshop)
}
