import { noLimit, type Rule } from '../rule.ts'
import { missingSizes } from './sizes.ts'

/** A diameter that the drawing does not give. */
export const diameterMissing: Rule<'diameter-missing'> = {
  find: subject =>
    missingSizes(subject, 'diameter').map(({ place, what, wanted }) => ({
      rule: 'diameter-missing',
      severity: 'error',
      places: [place],
      facts: { what, wanted },
    })),
  explanation: {
    purpose:
      'A hole without a diameter is bored with the bit that happens to be in the chuck, and what goes in is loose or does not go in.',
    limit: noLimit,
    origin: 'a hole is bored with a bit of one diameter',
  },
}
