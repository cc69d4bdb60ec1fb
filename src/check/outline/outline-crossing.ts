import { noLimit, type Rule } from '../rule.ts'
import { meeting, outlineFaults } from './faults.ts'

/** Two edges of an outline that cross, or touch where they are not neighbours. */
export const outlineCrossing: Rule<'outline-crossing'> = {
  find: subject =>
    outlineFaults(subject, 'crossing').map(found => ({ rule: 'outline-crossing', ...meeting(found) })),
  explanation: {
    purpose:
      'An outline that crosses itself has no inside: most often two points stand in the wrong order, or an arc turns the wrong way. The part is listed and not drawn.',
    limit: noLimit,
    origin: 'an outline goes once round the wood',
  },
}
