import type { BoredPlan, MouthPlan } from '../../plan/plan.ts'
import type { Entry } from '../../sheet/cards/card.ts'
import { angleValue, cardValue, type Knowing } from './card-value.ts'
import { said } from './place-entries.ts'

/** What a card asks about a hole besides its place. */
export function boredEntries(
  { bore, depth, leans, mouth, bit }: BoredPlan,
  knowing: Knowing,
): readonly Entry[] {
  const width: Entry =
    bore.kind === 'diameter'
      ? { what: 'diameter', noSide: true, value: cardValue(bore.diameter, knowing) }
      : said('diameter', `for ${bore.pin.value}`)
  const deep: Entry =
    depth === undefined
      ? said('depth', 'through')
      : { what: 'depth', noSide: true, value: cardValue(depth, knowing) }
  return [
    width,
    deep,
    ...leans.map(
      ({ toward, angle }): Entry => ({
        what: 'leans toward',
        from: toward.value,
        value: angleValue(angle, knowing),
      }),
    ),
    ...(mouth ? mouthEntries(mouth, knowing) : []),
    ...(bit ? [said('bit', bit.point.value)] : []),
  ]
}

function mouthEntries(mouth: MouthPlan, knowing: Knowing): readonly Entry[] {
  const { kind, diameter } = mouth
  const width: Entry = { what: kind, noSide: true, value: cardValue(diameter, knowing) }
  if (kind === 'counterbore') {
    return [width, { what: `${kind} deep`, noSide: true, value: cardValue(mouth.depth, knowing) }]
  }
  if (mouth.angle === undefined) return [width]
  return [width, { what: `${kind} angle`, noSide: true, value: angleValue(mouth.angle, knowing) }]
}
