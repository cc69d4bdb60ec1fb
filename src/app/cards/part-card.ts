import { labelFromId } from '../../model/build/label.ts'
import type { PartPlan, StockPlan, WrittenLength } from '../../plan/plan.ts'
import { partFields } from '../../sheet/cards/blank-card.ts'
import type { Block, Card, Entry } from '../../sheet/cards/card.ts'
import { cardValue, type Knowing } from './card-value.ts'
import { cutBlock } from './cut-block.ts'
import { said } from './place-entries.ts'

/** The card of a part, with everything on it that the plan says. */
export function partCard(
  part: PartPlan,
  stock: readonly StockPlan[],
  knowing: Knowing,
  confirms: (part: string, cut?: string) => boolean,
): Card {
  const id = part.id.value
  const rack = stock.find(s => s.id.value === part.from?.value)
  const own: Knowing = { ...knowing, confirmed: confirms(id) }
  return {
    fields: partFields({
      name: part.label?.value ?? labelFromId(id),
      make: String(part.make.value),
      mirrored: part.mirrored ? 'yes' : 'no',
      ...(part.from ? { from: rack?.label?.value ?? part.from.value } : {}),
      ...(part.page ? { page: part.page.value } : {}),
    }),
    sideNames: Object.fromEntries(Object.entries(part.sides).map(([side, name]) => [side, name.value])),
    blocks: [
      sizes(part, rack, own),
      ...part.cuts.map(cut =>
        cutBlock(cut, { ...own, confirmed: own.confirmed || confirms(id, cut.id.value) }),
      ),
    ],
  }
}

function sizes(part: PartPlan, rack: StockPlan | undefined, knowing: Knowing): Block {
  const size = (what: string, written: WrittenLength | undefined): Entry => ({
    what,
    noSide: true,
    value: cardValue(written, knowing),
  })
  const thickness = size('thickness', part.thickness ?? rack?.thickness)
  return { heading: [{ label: 'the part', share: 1 }], entries: [...shapeEntries(part, size), thickness] }
}

function shapeEntries(
  { shape }: PartPlan,
  size: (what: string, written: WrittenLength | undefined) => Entry,
): readonly Entry[] {
  switch (shape.kind) {
    case 'rectangle': {
      const corners = Object.entries(shape.corners).map(([corner, { kind, length }]) =>
        size(`${kind === 'round' ? 'radius' : 'chamfer'} ${corner.replace('-', ' ')}`, length),
      )
      return [size('length', shape.size.length), size('width', shape.size.width), ...corners]
    }
    case 'outline':
      return [
        size('length', shape.size?.length),
        size('width', shape.size?.width),
        said('shape', 'an outline'),
      ]
    case 'taper':
      return [
        size('length', shape.length),
        size('width at the left', shape.left),
        size('width at the right', shape.right),
      ]
    case 'disc':
      return [size('diameter', shape.diameter), ...(shape.inside ? [size('hole inside', shape.inside)] : [])]
  }
}
