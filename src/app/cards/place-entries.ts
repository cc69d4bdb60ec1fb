import type { FromSides, PositionPlan } from '../../plan/plan.ts'
import { type Entry, open } from '../../sheet/cards/card.ts'
import { cardValue, type Knowing } from './card-value.ts'

/** Where a cut is, in its two directions; a direction of which the plan says nothing is there to be filled in. */
export function placeEntries(at: PositionPlan, knowing: Knowing): readonly Entry[] {
  switch (at.kind) {
    case 'concentric':
      return [said('place', `centre of ${at.with.value}`)]
    case 'from-feature':
      return [
        said('place, from', at.feature.value),
        ...directions.flatMap((direction): readonly Entry[] => {
          const step = at[direction]
          if (step === undefined) return []
          return [{ what: 'and toward', from: step.toward, value: cardValue(step.length, knowing) }]
        }),
      ]
    case 'from-sides':
      return directions.map((direction, i) =>
        fromSide(i === 0 ? 'place, from' : 'and from', at[direction], knowing),
      )
  }
}

const directions = ['along', 'across'] as const

/** One distance from a side. */
export function fromSide(what: string, distance: FromSides['along'], knowing: Knowing): Entry {
  if (distance === undefined) return { what, value: open }
  if (distance.kind === 'centre') return said(what, 'centre')
  return { what, from: distance.side, value: cardValue(distance.length, knowing) }
}

/** What is given in a word and not in a size. */
export function said(what: string, word: string): Entry {
  return { what, noSide: true, value: { kind: 'given', words: [word] } }
}
