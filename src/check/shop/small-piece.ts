import { coincident } from '../../number/tolerance.ts'
import { mm, placeOfPart } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'

/** A part that is too small to be cut off at the saw by itself. */
export const smallPiece: Rule<'small-piece'> = {
  find: ({ parts, workshop: { smallestPiece } }) =>
    parts.flatMap(({ part }) => {
      const longest = Math.max(part.length.mm, part.width.mm)
      if (longest >= smallestPiece - coincident) return []
      return [
        {
          rule: 'small-piece',
          severity: 'note',
          places: [placeOfPart(part)],
          measured: mm(longest),
          limit: mm(smallestPiece),
          facts: {},
        },
      ]
    }),
  explanation: {
    purpose:
      'A small piece brings the hand near to the blade. It is cut from a longer one, which is held, or by hand in a mitre box; a cut that does not feel safe is done another way.',
    limit: ({ smallestPiece }, show) => `the longest side, at least ${show(smallestPiece)}`,
    origin: `${commonPractice}. The manual of the machine, the local rules and a qualified teacher come first`,
  },
}
