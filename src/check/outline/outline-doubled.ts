import { noLimit, type Rule } from '../rule.ts'
import { meeting, outlineFaults } from './faults.ts'

/** Two edges of an outline that lie on each other. */
export const outlineDoubled: Rule<'outline-doubled'> = {
  find: subject =>
    outlineFaults(subject, 'doubled').map(found => ({ rule: 'outline-doubled', ...meeting(found) })),
  explanation: {
    purpose:
      'An outline that runs back over itself encloses nothing there: a point stands twice, or an edge was drawn both ways. The part is listed and not drawn.',
    limit: noLimit,
    origin: 'an outline goes once round the wood',
  },
}
