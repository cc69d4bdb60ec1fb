import { noLimit, type Rule } from '../rule.ts'
import { missingSizes } from './sizes.ts'

/** Any other size that the drawing does not give: of a part, of a slot, of a depth. */
export const sizeMissing: Rule<'size-missing'> = {
  find: subject =>
    missingSizes(subject, 'other').map(({ place, what, wanted }) => ({
      rule: 'size-missing',
      severity: 'error',
      places: [place],
      facts: { what, wanted },
    })),
  explanation: {
    purpose:
      'A size that the drawing does not give has to be asked for or measured before the wood is cut, not after.',
    limit: noLimit,
    origin: 'nothing is made without its sizes',
  },
}
