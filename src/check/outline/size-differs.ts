import { mm, placeOfPart } from '../place.ts'
import { noLimit, type Rule } from '../rule.ts'

/** An outline that is larger or smaller than the size that stands beside it. */
export const sizeDiffers: Rule<'size-differs'> = {
  find: ({ parts }) =>
    parts.flatMap(({ part }) =>
      part.sizeDiffers.map(({ direction, stated, drawn }) => ({
        rule: 'size-differs',
        severity: 'error',
        places: [{ ...placeOfPart(part), source: stated.source }],
        measured: mm(drawn),
        limit: mm(stated.mm),
        facts: { direction, stated: mm(stated.mm), drawn: mm(drawn) },
      })),
    ),
  explanation: {
    purpose:
      'Where a drawing gives the overall size and every step of the outline, one of them is wrong when they do not add up. Cut by either, and the part may not fit.',
    limit: noLimit,
    origin: 'a chain of sizes adds up to the overall size',
  },
}
