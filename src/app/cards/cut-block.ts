import { sayFace } from '../../finding/face-name.ts'
import type { CutPlan, WrittenLength } from '../../plan/plan.ts'
import type { Block, Entry, Field } from '../../sheet/cards/card.ts'
import { boredEntries } from './bored-entries.ts'
import { cardValue, type Knowing } from './card-value.ts'
import { fromSide, placeEntries, said } from './place-entries.ts'

/** A cut as a card asks about it: its name over what its kind is made by, in the order of the plan. */
export function cutBlock(cut: CutPlan, knowing: Knowing): Block {
  const on = 'on' in cut ? cut.on.map(({ value }) => sayFace(value)).join(', ') : cut.edge.value
  const heading: Field[] = [
    { label: `${cut.kind.replace('-', ' ')}: its name`, share: 5, text: cut.label?.value ?? cut.id.value },
    { label: 'on side', share: 2, text: on },
  ]
  const count = countOf(cut)
  if (count !== undefined) heading.push({ label: 'how many', share: 2, text: count })
  return { heading, entries: entriesOf(cut, knowing) }
}

function countOf(cut: CutPlan): string | undefined {
  if (!('count' in cut)) return undefined
  return 'value' in cut.count ? String(cut.count.value) : cut.count.map(({ value }) => value).join(' × ')
}

function entriesOf(cut: CutPlan, knowing: Knowing): readonly Entry[] {
  const size = (what: string, written: WrittenLength | undefined): Entry => ({
    what,
    noSide: true,
    value: cardValue(written, knowing),
  })
  const depth = (written: WrittenLength | undefined): Entry =>
    written === undefined ? said('depth', 'through') : size('depth', written)
  switch (cut.kind) {
    case 'hole':
      return [...placeEntries(cut.at, knowing), ...boredEntries(cut, knowing)]
    case 'row': {
      const run: Entry =
        cut.run.kind === 'last'
          ? fromSide('last, from', cut.run.last.along ?? cut.run.last.across, knowing)
          : {
              what: 'spacing, toward',
              from: cut.run.toward.value,
              value: cardValue(cut.run.spacing, knowing),
            }
      return [...placeEntries(cut.at, knowing), run, ...boredEntries(cut, knowing)]
    }
    case 'grid':
      return [
        ...placeEntries(cut.at, knowing),
        size('spacing along', cut.spacing[0]),
        size('spacing across', cut.spacing[1]),
        ...boredEntries(cut, knowing),
      ]
    case 'hole-circle':
      return [
        ...placeEntries(cut.at, knowing),
        size('circle of centres', cut.circle),
        ...boredEntries(cut, knowing),
      ]
    case 'slot':
      return [
        ...placeEntries(cut.at, knowing),
        size('along', cut.along),
        size('across', cut.across),
        depth(cut.depth),
      ]
    case 'notch':
      return [
        fromSide('place, from', cut.at, knowing),
        size('along the edge', cut.along),
        size('into the part', cut.into),
      ]
    case 'cut-out': {
      const { shape } = cut
      const place = placeEntries(cut.at, knowing)
      switch (shape.kind) {
        case 'rectangle':
          return [...place, size('along', shape.along), size('across', shape.across)]
        case 'disc':
          return [...place, size('diameter', shape.diameter)]
        case 'outline':
          return [...(shape.placed ? [] : place), said('shape', 'an outline')]
      }
    }
  }
}
