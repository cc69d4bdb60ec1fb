import type { FindingOf } from '../../finding/finding.ts'
import type { Part } from '../../model/part.ts'
import type { MadeCorner } from '../../model/shape-facts.ts'
import { has, sizesFor } from '../../workshop/bits.ts'
import { nearestSize } from '../../workshop/size-set.ts'
import { mm, placeOfPart } from '../place.ts'
import type { Rule } from '../rule.ts'
import type { Subject } from '../subject/subject.ts'
import { worstOfEach } from '../worst-of-each.ts'

/** A rounded corner whose radius is not in the shop's circle templates; a larger one is drawn with compasses. */
export const templateMissing: Rule<'template-missing'> = {
  find: subject => subject.parts.flatMap(({ part }) => missingFor(part, subject)),
  explanation: {
    purpose:
      'A corner whose radius is in the set of circle templates is drawn straight on the wood. For any other it takes compasses or a glued-on pattern; often the next radius would do as well.',
    limit: () => 'a circle of the workshop file, in inches or in millimetres, within what can be printed',
    origin: 'the circle templates of the workshop file',
  },
}

function missingFor(part: Part, { model, workshop: { circleTemplates } }: Subject) {
  const set = sizesFor(circleTemplates, model.units)
  const largest = set.at(-1) ?? 0
  const without = part.corners.filter(
    ({ kind, size }) => kind === 'round' && 2 * size.mm <= largest && !has(circleTemplates, 2 * size.mm),
  )
  const each = worstOfEach(
    without,
    ({ size }) => String(size.mm),
    () => 0,
  )
  return each.flatMap(({ worst: { size } }): FindingOf<'template-missing'>[] => {
    const nearest = nearestSize(set, 2 * size.mm)
    if (nearest === undefined) return []
    return [
      {
        rule: 'template-missing',
        severity: 'note',
        places: [{ ...placeOfPart(part), source: size.source }],
        measured: mm(size.mm),
        limit: mm(nearest / 2),
        facts: {
          corners: namesOf(without, size.mm),
          nearest: mm(nearest / 2),
          difference: mm(nearest / 2 - size.mm),
        },
      },
    ]
  })
}

function namesOf(corners: readonly MadeCorner[], radius: number): string {
  return corners
    .filter(({ size }) => size.mm === radius)
    .map(({ name }) => name)
    .join(', ')
}
