import type { FindingOf } from '../../finding/finding.ts'
import { isOfRow, mm, placeOfFeature, wordFor } from '../place.ts'
import type { Rule } from '../rule.ts'
import { edgeName } from '../subject/edge-name.ts'
import { sticksOut } from './sticks-out.ts'

/** A hole, slot, cut-out or notch that sticks out of the part: by how much, and past which edge. */
export const outsidePart: Rule<'outside-part'> = {
  find: ({ parts }) =>
    parts.flatMap(({ part, planes }) =>
      planes.flatMap(plane =>
        plane.cuts.flatMap((cut): FindingOf<'outside-part'>[] => {
          // holes of a row are the row's own rule's business
          const out = isOfRow(cut.feature) ? undefined : sticksOut(plane, cut)
          if (out === undefined) return []
          return [
            {
              rule: 'outside-part',
              severity: 'error',
              places: [placeOfFeature(part, cut.feature)],
              measured: mm(out.by),
              limit: mm(0),
              facts: { what: wordFor(cut.feature), beyond: edgeName(plane.face, out.beyond) },
            },
          ]
        }),
      ),
    ),
  explanation: {
    purpose:
      'A cut that goes past the edge of its part is nearly always a slip: a distance from the wrong side, 1 5/16 read for 15/16. The bit then breaks out of the edge.',
    limit: () => 'no part of a cut lies outside the outline; a notch may take a rounded corner with it',
    origin: 'true distances to the outline, its arcs included',
  },
}
