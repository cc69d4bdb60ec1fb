import type { Caption, Drawing } from '../../drawing/drawing.ts'
import { linesMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import type { Fonts } from '../../text/fonts.ts'
import { blankCard } from './blank-card.ts'
import type { Card } from './card.ts'
import { drawCard } from './draw-card.ts'

export type CardLayout = {
  /** What of a page may be drawn on. */
  readonly room: { readonly width: number; readonly height: number }
  readonly perPage: 1 | 2
  readonly caption: Caption
}

/** White above and below the line along which two cards are cut apart. */
const cutting = 3

/** Blank cards, each with as many places for holes as there is room for, and nothing that goes on. */
export function blankCardPages(count: number, layout: CardLayout, fonts: Fonts): readonly Drawing[] {
  const slots = slotsOf(layout)
  return inPages(
    Array.from({ length: count }, (_, i) => drawCard(slots[i % slots.length]!, blankCard, true, fonts).marks),
    layout,
  )
}

/** A card for each part, in the order given; what finds no room goes on to another card of the same part. */
export function cardPages(cards: readonly Card[], layout: CardLayout, fonts: Fonts): readonly Drawing[] {
  const slots = slotsOf(layout)
  const drawn: (readonly Mark[])[] = []
  for (const card of cards) {
    let blocks = card.blocks
    let begins = true
    do {
      const slot = slots[drawn.length % slots.length]!
      const { marks, rest } = drawCard(slot, { ...card, blocks }, begins, fonts)
      drawn.push(marks)
      // a card with no room for one block of holes is drawn without them, rather than for ever
      if (!begins && rest.length === blocks.length) break
      blocks = rest
      begins = false
    } while (blocks.length > 0)
  }
  return inPages(drawn, layout)
}

function inPages(cards: readonly (readonly Mark[])[], layout: CardLayout): readonly Drawing[] {
  const { perPage, caption } = layout
  const bounds = roomOf(layout)
  return Array.from({ length: Math.ceil(cards.length / perPage) }, (_, i): Drawing => {
    const here = cards.slice(i * perPage, (i + 1) * perPage)
    const apart = here.length > 1 ? [cutApart(bounds)] : []
    return {
      id: `card-${i + 1}`,
      caption,
      marks: [...here.flat(), ...apart],
      bounds,
      keepWhole: [rectangle(bounds)],
    }
  })
}

function roomOf({ room }: CardLayout): Bounds {
  return { left: 0, bottom: 0, right: room.width, top: room.height }
}

/** Where the cards of a page stand, from the top; half the width of a rule is kept clear all round. */
function slotsOf(layout: CardLayout): readonly Bounds[] {
  const { left, right, top, bottom } = roomOf(layout)
  const whole = { left: left + clear, right: right - clear, top: top - clear, bottom: bottom + clear }
  if (layout.perPage === 1) return [whole]
  const middle = (top + bottom) / 2
  return [
    { ...whole, bottom: middle + cutting },
    { ...whole, top: middle - cutting },
  ]
}

const clear = 0.2

function cutApart({ left, right, top, bottom }: Bounds): Mark {
  const y = (top + bottom) / 2
  return linesMark({ layer: 'paper', subject: 'cut-apart' }, 'rough-cut', [
    [
      { x: left + clear, y },
      { x: right - clear, y },
    ],
  ])
}
