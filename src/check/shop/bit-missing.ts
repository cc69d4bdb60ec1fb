import type { FindingOf } from '../../finding/finding.ts'
import { has, sizesFor } from '../../workshop/bits.ts'
import { nearestSize } from '../../workshop/size-set.ts'
import { isOfRow, mm, placeOfCut, placeOfFeature, wordForRow } from '../place.ts'
import type { Rule } from '../rule.ts'
import { type HoleCut, isHole } from '../subject/cut.ts'
import { worstOfEach } from '../worst-of-each.ts'

/** A hole for which the shop has no bit; the nearest one, and by how much it is off. */
export const bitMissing: Rule<'bit-missing'> = {
  find: ({ model, parts, workshop: { bits } }) =>
    parts.flatMap(({ part, planes }) => {
      const without = planes.flatMap(({ cuts }) =>
        cuts.filter((cut): cut is HoleCut => isHole(cut) && !has(bits, 2 * cut.radius)),
      )
      // the holes of a row are bored with one bit
      const each = worstOfEach(
        without,
        ({ feature }) => feature.cut,
        () => 0,
      )
      return each.map(({ worst: { feature, radius } }): FindingOf<'bit-missing'> => {
        const nearest = nearestSize(sizesFor(bits, model.units), 2 * radius)
        const row = isOfRow(feature)
        return {
          rule: 'bit-missing',
          severity: 'note',
          places: [(row ? placeOfCut : placeOfFeature)(part, feature)],
          measured: mm(2 * radius),
          ...(nearest === undefined ? {} : { limit: mm(nearest) }),
          facts: {
            what: row ? wordForRow(feature) : 'hole',
            ...(nearest === undefined ? {} : { nearest: mm(nearest), difference: mm(nearest - 2 * radius) }),
          },
        }
      })
    }),
  explanation: {
    purpose:
      'A diameter that is on the drawing and not in the drawer is found out at the drill press. The rule names the nearest bit and what it would be off, so that the size or the bit can be changed before.',
    limit: () => 'a bit of the workshop file, in inches or in millimetres, within what can be printed',
    origin: 'the bits of the workshop file',
  },
}
