import type { FindingOf } from '../../finding/finding.ts'
import { count, isOfRow, mm, placeOfCut, wordForRow } from '../place.ts'
import type { Rule } from '../rule.ts'
import type { Cut } from '../subject/cut.ts'
import { edgeName } from '../subject/edge-name.ts'
import { worstOfEach } from '../worst-of-each.ts'

/** A row, grid or circle of holes that leads off the part: how many holes, and how far the farthest. */
export const rowOffPart: Rule<'row-off-part'> = {
  find: ({ parts }) =>
    parts.flatMap(({ part, planes }) => {
      const off = planes.flatMap(plane =>
        plane.cuts.flatMap((cut): { cut: Cut; by: number; beyond: string }[] => {
          const out = isOfRow(cut.feature) ? plane.out.get(cut) : undefined
          return out === undefined ? [] : [{ cut, by: out.by, beyond: edgeName(plane.face, out.beyond) }]
        }),
      )
      const worst = worstOfEach(
        off,
        ({ cut }) => `${cut.feature.cut} ${cut.feature.face}`,
        ({ by }) => by,
      )
      return worst.map(
        ({ worst: { cut, by, beyond }, count: number }): FindingOf<'row-off-part'> => ({
          rule: 'row-off-part',
          severity: 'error',
          places: [placeOfCut(part, cut.feature)],
          measured: mm(by),
          limit: mm(0),
          facts: {
            what: wordForRow(cut.feature),
            count: count(number),
            of: count(cut.feature.row?.count ?? number),
            beyond,
          },
        }),
      )
    }),
  explanation: {
    purpose:
      'A row whose last hole runs off the part has a spacing, a count or a first place that is wrong. The fence does not notice.',
    limit: () => 'no part of a hole lies outside the outline',
    origin: 'true distances to the outline, its arcs included',
  },
}
