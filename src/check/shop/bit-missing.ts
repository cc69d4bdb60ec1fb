import type { FindingOf } from '../../finding/finding.ts'
import type { Placed } from '../../model/feature.ts'
import { has, nearestOf } from '../../workshop/bits.ts'
import { isOfRow, mm, placeOfCut, placeOfFeature, wordForRow } from '../place.ts'
import type { Rule } from '../rule.ts'
import { type HoleCut, isHole } from '../subject/cut.ts'
import { worstOfEach } from '../worst-of-each.ts'

/** A hole for which the shop has no bit; the nearest one, and by how much it is off. */
export const bitMissing: Rule<'bit-missing'> = {
  find: ({ parts, workshop: { bits } }) =>
    parts.flatMap(({ part, planes }) => {
      const wanted = planes.flatMap(({ cuts }) => cuts.filter(isHole).flatMap(diametersOf))
      // the holes of a row are bored with one bit
      const each = worstOfEach(
        wanted.filter(({ diameter }) => !has(bits, diameter)),
        ({ feature, of }) => `${feature.cut} ${of}`,
        () => 0,
      )
      return each.map(({ worst: { feature, of, diameter } }): FindingOf<'bit-missing'> => {
        const nearest = nearestOf(bits, diameter)
        const row = isOfRow(feature)
        return {
          rule: 'bit-missing',
          severity: 'note',
          places: [(row ? placeOfCut : placeOfFeature)(part, feature)],
          measured: mm(diameter),
          ...(nearest === undefined ? {} : { limit: mm(nearest) }),
          facts: {
            what: of === 'counterbore' ? of : row ? wordForRow(feature) : of,
            ...(nearest === undefined ? {} : { nearest: mm(nearest), difference: mm(nearest - diameter) }),
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

type Wanted = { readonly feature: Placed; readonly of: 'hole' | 'counterbore'; readonly diameter: number }

/** The bits that a hole is bored with; a countersink's cutter fits holes of many widths. */
function diametersOf({ feature, bore, radius }: HoleCut): readonly Wanted[] {
  const hole: Wanted = { feature, of: 'hole', diameter: 2 * radius }
  if (bore.mouth?.kind !== 'counterbore') return [hole]
  return [hole, { feature, of: 'counterbore', diameter: bore.mouth.diameter.mm }]
}
