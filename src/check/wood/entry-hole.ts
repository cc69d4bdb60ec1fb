import type { FindingOf } from '../../finding/finding.ts'
import { discProtrusion } from '../../geometry/measure/protrusion.ts'
import { isPlaced } from '../../model/feature.ts'
import { mm, placeOfFeature } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'

/** A cut-out in whose waste no hole for the saw's blade can be bored, or one whose hole takes some of the part away. */
export const entryHole: Rule<'entry-hole'> = {
  find: ({ parts }) =>
    parts.flatMap(({ part }) =>
      part.drawn.features.filter(isPlaced).flatMap((feature): FindingOf<'entry-hole'>[] => {
        const { shape } = feature
        if (shape.kind !== 'cut-out') return []
        const places = [placeOfFeature(part, feature)]
        const { entry, region } = shape
        if (entry === undefined) return [{ rule: 'entry-hole', severity: 'warning', places, facts: {} }]
        const out = discProtrusion(entry.centre, entry.diameter / 2, region)
        if (out === undefined) return []
        return [
          {
            rule: 'entry-hole',
            severity: 'error',
            places,
            measured: mm(out.by),
            limit: mm(0),
            facts: { diameter: mm(entry.diameter) },
          },
        ]
      }),
    ),
  explanation: {
    purpose:
      'A blade gets into the inside of a part through a hole in the waste. Where the hole is wider than the waste, or stands in the wrong place, it spoils the line.',
    limit: () => 'the whole hole lies in the waste',
    origin: commonPractice,
  },
}
