import { noLimit, type Rule } from '../rule.ts'
import { missingSizes } from './sizes.ts'

/** A radius that the drawing does not give. */
export const radiusMissing: Rule<'radius-missing'> = {
  find: subject =>
    missingSizes(subject, 'radius').map(({ place, what, wanted }) => ({
      rule: 'radius-missing',
      severity: 'error',
      places: [place],
      facts: { what, wanted },
    })),
  explanation: {
    purpose:
      'A rounded corner without its radius is cut by eye, and the left and the right part of a pair come out different.',
    limit: noLimit,
    origin: 'a corner is round by a radius',
  },
}
