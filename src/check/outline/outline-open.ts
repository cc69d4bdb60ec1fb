import { mm } from '../place.ts'
import { noLimit, type Rule } from '../rule.ts'
import { outlineFaults } from './faults.ts'

/** A symmetric outline whose half does not end on the axis that it began on. */
export const outlineOpen: Rule<'outline-open'> = {
  find: subject =>
    outlineFaults(subject, 'open').map(({ fault, place, what }) => ({
      rule: 'outline-open',
      severity: 'error',
      places: [place],
      ...(fault.by === undefined ? {} : { measured: mm(fault.by), limit: mm(0) }),
      facts: { what, edges: fault.edges.join(' and ') },
    })),
  explanation: {
    purpose:
      'Half an outline and its mirror image make a whole one when the half begins and ends on the same axis. Where it does not, the two halves do not meet, and nothing can be cut.',
    limit: noLimit,
    origin: 'an outline closes',
  },
}
