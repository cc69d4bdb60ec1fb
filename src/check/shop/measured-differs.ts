import type { FindingOf } from '../../finding/finding.ts'
import type { Part } from '../../model/part.ts'
import { coincident } from '../../number/tolerance.ts'
import { sandingAllowance } from '../../workshop/defaults.ts'
import type { Workshop } from '../../workshop/workshop.ts'
import { mm, placeOfPart } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'

/** A block that was measured and is not the part of the plan: a slip in measuring, or another piece of wood. */
export const measuredDiffers: Rule<'measured-differs'> = {
  find: ({ parts, workshop }) => parts.flatMap(({ part }) => differing(part, workshop)),
  explanation: {
    purpose:
      'Paper that is wrapped round a block is made as large as the block was measured, and holes keep their distances from face side, face edge and reference end. A little off is what measuring is for. Where it is more, a rule was read wrong, length and width were exchanged, or the block is no longer the part that the plan places its holes in.',
    limit: ({ sanding }, show) =>
      `what sanding takes: ${show(sanding.small)} on a part under ${show(sanding.smallBelow)}, ${show(sanding.large)} above; and no more than a tenth of the size`,
    origin: `the allowance for sanding of the workshop file; ${commonPractice}`,
  },
}

/** Of a thin part as much as sanding takes off a thick one would be another board. */
const mostOfSize = 1 / 10

const directions = ['length', 'width', 'thickness'] as const

function differing(part: Part, workshop: Workshop): readonly FindingOf<'measured-differs'>[] {
  const { measured, length, width } = part
  if (measured === undefined) return []
  const allowance = sandingAllowance(workshop, length.mm, width.mm)
  return directions.flatMap((direction): readonly FindingOf<'measured-differs'>[] => {
    const [real, wanted] = [measured[direction], part[direction].mm]
    const allowed = Math.min(allowance, mostOfSize * wanted)
    const difference = real.mm - wanted
    if (Math.abs(difference) <= allowed + coincident) return []
    return [
      {
        rule: 'measured-differs',
        severity: 'warning',
        places: [{ ...placeOfPart(part), source: real.source }, placeOfPart(part)],
        measured: mm(real.mm),
        limit: mm(wanted),
        facts: { direction, difference: mm(difference), allowed: mm(allowed) },
      },
    ]
  })
}
