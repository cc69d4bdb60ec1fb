import type { FindingOf } from '../../finding/finding.ts'
import { placeOfPart } from '../place.ts'
import { noLimit, type Rule } from '../rule.ts'

/** Two parts that are called the same on paper. */
export const labelTwice: Rule<'label-twice'> = {
  find: ({ model }) => {
    const first = new Map<
      string,
      { readonly id: string; readonly source: (typeof model.parts)[0]['source'] }
    >()
    return [...model.parts, ...model.undrawn].flatMap((part): FindingOf<'label-twice'>[] => {
      const other = first.get(part.label)
      if (other === undefined) {
        first.set(part.label, part)
        return []
      }
      return [
        {
          rule: 'label-twice',
          severity: 'warning',
          places: [placeOfPart(part), placeOfPart(other)],
          facts: { label: part.label },
        },
      ]
    })
  },
  explanation: {
    purpose:
      'Two different parts under one label look like two copies of one part on the bench, and one of them is then cut twice.',
    limit: noLimit,
    origin: 'the plan itself',
  },
}
