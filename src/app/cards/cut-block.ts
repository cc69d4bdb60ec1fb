import { sayFace } from '../../finding/face-name.ts'
import { excerpt } from '../../finding/visible.ts'
import type {
  ChamferPlan,
  CutPlan,
  GroovePlan,
  RebatePlan,
  RoundOverPlan,
  WrittenLength,
} from '../../plan/plan.ts'
import type { Block, Entry, Field } from '../../sheet/cards/card.ts'
import { boredEntries } from './bored-entries.ts'
import { angleValue, cardValue, type Knowing } from './card-value.ts'
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
  const stops = ({ stopped, length }: GroovePlan | RebatePlan): readonly Entry[] => [
    ...stopped.map(
      ({ side, distance }): Entry => ({
        what: 'stops short of',
        from: side.value,
        value: cardValue(distance, knowing),
      }),
    ),
    ...(length === undefined ? [] : [size('length', length)]),
  ]
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
    case 'groove':
      return [
        fromSide('place, from', cut.at, knowing),
        size('width', cut.width),
        size('depth', cut.depth),
        ...stops(cut),
      ]
    case 'rebate':
      return [
        said('along', sayFace(cut.edge.value)),
        size('width', cut.width),
        size('depth', cut.depth),
        ...stops(cut),
      ]
    case 'bevel':
      return [
        said('shorter at', cut.short.value),
        { what: 'angle from square', noSide: true, value: angleValue(cut.angle, knowing) },
      ]
    case 'chamfer':
      return [said('edges', edgesOf(cut)), size('width', cut.width), size('depth', cut.depth)]
    case 'round-over':
      return [said('edges', edgesOf(cut)), size('radius', cut.radius)]
    case 'engrave': {
      const { drawing } = cut
      const place = drawing.at === undefined ? [] : placeEntries(drawing.at, knowing)
      const what =
        drawing.kind === 'text'
          ? [said('text', excerpt(drawing.text.value, longestText)), size('height', drawing.height)]
          : [said('drawing', 'in lines')]
      return [...place, ...what, ...(cut.depth === undefined ? [] : [size('depth', cut.depth)])]
    }
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

/** As much of an engraved text as a line of a card has room for. */
const longestText = 24

function edgesOf({ edges }: ChamferPlan | RoundOverPlan): string {
  return edges === 'all' ? edges : edges.map(({ value }) => sayFace(value)).join(', ')
}
