import type { Block, Card, Field } from './card.ts'
import { open } from './card.ts'

/** More holes than any card has room for: what has none is left out. */
const mostHoles = 40

const blankCut: Block = {
  heading: [
    { label: 'hole, row, slot or notch: its name', share: 5 },
    { label: 'on side', share: 2 },
    { label: 'how many', share: 2 },
    { label: 'every', share: 2 },
  ],
  entries: [
    { what: 'place, from', value: open },
    { what: 'and from', value: open },
    { what: 'diameter, or size', noSide: true, value: open },
    { what: 'depth', noSide: true, value: open },
  ],
}

/** A card with nothing filled in, and with as many places for holes and slots as fit. */
export const blankCard: Card = {
  fields: partFields({}),
  sideNames: {},
  blocks: [
    {
      heading: [{ label: 'the part', share: 1 }],
      entries: ['length', 'width', 'thickness', 'radius of corners'].map(what => ({
        what,
        noSide: true,
        value: open,
      })),
    },
    ...Array.from({ length: mostHoles }, (): Block => blankCut),
  ],
}

/** What stands over a card, in the order in which the plan asks for it. */
export function partFields(known: {
  readonly name?: string
  readonly make?: string
  readonly mirrored?: string
  readonly from?: string
  readonly page?: string
}): readonly Field[] {
  const field = (label: string, share: number, text: string | undefined): Field => ({
    label,
    share,
    ...(text === undefined ? {} : { text }),
  })
  return [
    field('part', 6, known.name),
    field('make', 1.3, known.make),
    field('mirrored pair?', 2.1, known.mirrored),
    field('from stock', 3.4, known.from),
    field('page of the drawing', 2.8, known.page),
  ]
}
