import { noLimit, type Rule } from '../rule.ts'
import { outlineFaults } from './faults.ts'

/** A step of an outline that leads to where it begins. */
export const outlineNoLength: Rule<'outline-no-length'> = {
  find: subject =>
    outlineFaults(subject, 'no-length').map(({ fault, place, what }) => ({
      rule: 'outline-no-length',
      severity: 'error',
      places: [place],
      facts: { what, edges: fault.edges.join(' and ') },
    })),
  explanation: {
    purpose: 'A step that leads nowhere is a point that stands twice, or a size that was forgotten.',
    limit: noLimit,
    origin: 'an edge has a length',
  },
}
