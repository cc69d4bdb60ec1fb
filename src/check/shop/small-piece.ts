import type { Part } from '../../model/part.ts'
import { coincident } from '../../number/tolerance.ts'
import { count, mm } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'
import { someNames } from '../some-names.ts'

/** Parts that are too small to be cut off at the saw by themselves. A model has many of them: they are said once. */
export const smallPiece: Rule<'small-piece'> = {
  find: ({ model, workshop: { smallestPiece } }) => {
    const small = model.parts.filter(part => longestSide(part) < smallestPiece - coincident)
    const [first] = small
    if (first === undefined) return []
    return [
      {
        rule: 'small-piece',
        severity: 'note',
        places: [{ source: first.source }],
        measured: mm(Math.min(...small.map(longestSide))),
        limit: mm(smallestPiece),
        facts: { parts: someNames(small.map(({ id }) => id)), count: count(small.length) },
      },
    ]
  },
  explanation: {
    purpose:
      'A small piece brings the hand near to the blade. It is cut from a longer one, which is held, or by hand in a mitre box; a cut that does not feel safe is done another way.',
    limit: ({ smallestPiece }, show) => `the longest side, at least ${show(smallestPiece)}`,
    origin: `${commonPractice}. The manual of the machine, the local rules and a qualified teacher come first`,
  },
}

function longestSide({ length, width }: Part): number {
  return Math.max(length.mm, width.mm)
}
