import { expect, test } from 'vitest'
import { diameterMissing } from '../../../src/check/missing/diameter-missing.ts'
import { radiusMissing } from '../../../src/check/missing/radius-missing.ts'
import { sizeMissing } from '../../../src/check/missing/size-missing.ts'
import { planOf, planWithCuts } from '../../model/model-of.ts'
import { found as foundBy } from '../found.ts'

/** What the three rules find together; which of them a size is for is what its name begins with. */
const found = (text: string) =>
  [...foundBy(radiusMissing, text), ...foundBy(diameterMissing, text), ...foundBy(sizeMissing, text)].map(
    ({ rule, facts, places, severity }) => {
      expect(severity).toBe('error')
      expect(rule).toBe(
        /^(radius|diameter)/.test(facts.wanted) ? `${facts.wanted.split(' ')[0]}-missing` : 'size-missing',
      )
      return [places[0]!.part, places[0]!.feature, facts.what, facts.wanted]
    },
  )

test.each<[text: string, wanted: readonly (readonly (string | undefined)[])[]]>([
  [
    planOf('', 'unknown x 40 x unknown'),
    [
      ['plank', undefined, 'part', 'length'],
      ['plank', undefined, 'part', 'thickness'],
    ],
  ],
  [
    planOf('    corners: { top-left: unknown }\n'),
    [['plank', undefined, 'part', 'radius of the top-left corner']],
  ],
  [planWithCuts(['hole: pin, at: center, diameter: unknown']), [['plank', 'pin', 'hole', 'diameter']]],
  [planWithCuts(['hole: pin, at: center, diameter: 4, depth: unknown']), [['plank', 'pin', 'hole', 'depth']]],
  [
    planWithCuts(['slot: mouth, at: center, size: 30 x unknown']),
    [['plank', 'mouth', 'slot', 'size across']],
  ],
  [
    planWithCuts(['row: posts, at: center, toward: top, spacing: unknown, count: 3, diameter: 4']),
    [['plank', 'posts', 'row', 'spacing']],
  ],
  [
    planWithCuts(['notch: step, at: { left: 3 }, size: 12 x unknown']),
    [['plank', 'step', 'notch', 'size into the part']],
  ],
])('case %#: each size that the drawing does not give is named, with its part and cut', (text, wanted) => {
  expect(found(text)).toEqual(wanted)
})

test.each([
  planOf('    corners: 5\n'),
  planWithCuts(['hole: pin, at: center, diameter: 4']),
  // its place is missing, which is another rule's business
  planWithCuts(['hole: pin, diameter: 4']),
])('case %#: nothing is found where every size is given', text => {
  expect(found(text)).toEqual([])
})
