import type { FindingOf } from '../../finding/finding.ts'
import { visible } from '../../finding/visible.ts'
import type { Missing } from '../../model/feature.ts'
import { placeOfFeature } from '../place.ts'
import { noLimit, type Rule } from '../rule.ts'

/** A cut that the plan does not put anywhere; it says which distances are wanted. */
export const positionMissing: Rule<'position-missing'> = {
  find: ({ parts }) =>
    parts.flatMap(({ part }) =>
      part.drawn.features.flatMap((feature): FindingOf<'position-missing'>[] => {
        if (feature.shape.kind !== 'unplaced') return []
        const { what, missing } = feature.shape
        const wanted = missing.flatMap(wantedFor)
        if (wanted.length === 0) return []
        return [
          {
            rule: 'position-missing',
            severity: 'error',
            places: [placeOfFeature(part, feature)],
            facts: { what, wanted: wanted.join(', and one from ') },
          },
        ]
      }),
    ),
  explanation: {
    purpose:
      'A drawing often gives a hole with its diameter and forgets where it is. Nobody notices before the wood lies on the drill press. The rule names the distances that are wanted, so that they can be asked for or measured while the drawing is at hand.',
    limit: noLimit,
    origin: 'a place on a face is two distances',
  },
}

function wantedFor(missing: Missing): readonly string[] {
  switch (missing.kind) {
    case 'distance':
      return [missing.between.join(' or ')]
    case 'place-of':
      return [`${visible(missing.cut)}, which has no place itself`]
    default:
      return []
  }
}
