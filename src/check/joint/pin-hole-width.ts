import type { FindingOf } from '../../finding/finding.ts'
import { printable } from '../../number/tolerance.ts'
import { bitFor } from '../../workshop/bits.ts'
import { clearance } from '../../workshop/fits.ts'
import { mm } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'
import type { Subject } from '../subject/subject.ts'
import { type HoledJoint, type JointHole, pinJoints, placesOf } from './holes.ts'

/** A hole that the pin does not go into, or in which it rattles; or one that is made for another pin. */
export const pinHoleWidth: Rule<'pin-hole-width'> = {
  find: subject =>
    pinJoints(subject).flatMap(joint =>
      joint.through.flatMap(holes => {
        // the holes of a row are of one diameter
        const [first] = holes
        return first === undefined ? [] : judge(joint, first, subject)
      }),
    ),
  explanation: {
    purpose:
      'Where one pin goes through several parts, each of them has its own hole on the drawing, and one of them is often forgotten when the pin changes. A hole that names its pin (for:) follows.',
    limit: ({ fits }, show) =>
      `from the pin itself to the bit for a turning fit, the pin and ${show(fits.turning.small)} or ${show(fits.turning.large)}`,
    origin: commonPractice,
  },
}

function judge(
  { pin }: HoledJoint,
  found: JointHole,
  { model, workshop: { bits, fits } }: Subject,
): readonly FindingOf<'pin-hole-width'>[] {
  const { bore } = found.hole
  const places = placesOf(found)
  if (bore.for !== undefined) {
    if (bore.for.pin === pin.id) return []
    const facts = { pin: pin.id, fault: 'other-pin', other: bore.for.pin } as const
    return [{ rule: 'pin-hole-width', severity: 'error', places, facts }]
  }
  if (pin.diameter === 'unknown') return []
  const width = bore.diameter.mm
  const wanted = pin.diameter.mm
  if (width < wanted - printable) {
    return [
      {
        rule: 'pin-hole-width',
        severity: 'error',
        places,
        measured: mm(width),
        limit: mm(wanted),
        facts: { pin: pin.id, fault: 'tight' },
      },
    ]
  }
  const turning = wanted + clearance(fits, 'turning', wanted)
  const widest = bitFor(bits, turning, model.units) ?? turning
  if (width <= widest + printable) return []
  return [
    {
      rule: 'pin-hole-width',
      severity: 'warning',
      places,
      measured: mm(width),
      limit: mm(widest),
      facts: { pin: pin.id, fault: 'loose' },
    },
  ]
}
