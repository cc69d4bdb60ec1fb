import { mm } from '../place.ts'
import { noLimit, type Rule } from '../rule.ts'

/** A size that was taken off the paper drawing with a rule. */
export const scaledSize: Rule<'scaled-size'> = {
  find: ({ model }) =>
    model.scaled
      .filter(({ origin }) => origin === 'measured')
      .map(({ size, place }) => ({
        rule: 'scaled-size',
        severity: 'warning',
        places: [{ ...place, source: size.source }],
        measured: mm(size.mm),
        facts: { written: size.written, confirm: [place.part, place.feature].filter(Boolean).join('.') },
      })),
  explanation: {
    purpose:
      'A size scaled off a drawing is as true as the paper, the copy and the eye. It is printed with ~ and listed here until somebody has asked for it or measured the thing itself; then take the ~ away, or list it under confirmed.',
    limit: noLimit,
    origin: 'drawings say so themselves: do not scale',
  },
}
