import type { Placed } from '../../model/feature.ts'
import type { Model, Part, Solid } from '../../model/part.ts'
import { plain } from '../../text/words.ts'
import { entryLine } from '../key/entry-line.ts'
import type { KeyEntry } from '../key/key-entry.ts'
import type { KeyLine } from '../key/key-table.ts'
import { elsewhereWords, missingWords, sideNames } from '../key/key-words.ts'
import type { SheetContext } from '../sheet.ts'
import { showSize } from '../show-size.ts'
import { sizeAndStock } from '../size-words.ts'
import { transferOf, transferWords } from '../transfer.ts'
import type { OnPart } from './on-part.ts'
import { pieceName, type Served } from './pieces-served.ts'
import { placeRows } from './place-rows.ts'

/** Beside a template: what the letters mean, what is not on it and why, and how it is used. */
export function keyLines(
  served: Served,
  key: readonly KeyEntry[],
  elsewhere: readonly Placed[],
  drawn: OnPart,
  context: SheetContext,
): readonly KeyLine[] {
  const { model, workshop } = context
  const { part, pieces } = served
  const name = sideNames(pieces[0].hand, part)
  const remarks = [
    ...(pieces.length > 1 ? [`Print this page ${pieces.length} times, once for each piece.`] : []),
    ...notOnPaper(served, elsewhere),
    ...(part.note === undefined ? [] : [part.note]),
    ...noRoom(served, drawn),
    legend(drawn),
    ...leaningLegend(pieces[0].solid),
    ...forBevel(served),
    ...forBush(part, drawn, model),
    `${howToCut(served, drawn)} ${transferWords(transferOf(part, context))}`,
    ...(drawn.unlettered.length > 0 ? [unletteredWords] : []),
  ]
  const places = placeRows(drawn.unlettered, served, context)
  return [
    ...key.map(entry => entryLine(entry, model, { name, bits: workshop.bits })),
    { kind: 'size', words: sizeAndStock(part, model) },
    ...remarks.filter(text => text !== '').map((text): KeyLine => ({ kind: 'remark', text })),
    ...(places.length > 0 ? [{ kind: 'places', rows: places } as const] : []),
  ]
}

const unletteredWords =
  'No room on the part for these letters. They stand so far from the face edge and from the reference end, at the centres of holes and at the near sides of all else:'

/** What a reader of this paper would look for in vain. */
export function notOnPaper({ part, pieces }: Served, elsewhere: readonly Placed[]): readonly string[] {
  const { solid, hand } = pieces[0]
  const name = sideNames(hand, part)
  return [
    ...part.missing.map(m => `Not on this paper: ${missingWords([m], name)}.`),
    ...solid.features.flatMap(({ id, shape }) =>
      shape.kind === 'unplaced'
        ? [`Not on this paper: ${shape.what} ${id} wants ${missingWords(shape.missing, name)}.`]
        : [],
    ),
    ...(elsewhere.length > 0
      ? [`On other faces, not on this paper: ${elsewhereWords(elsewhere, name)}.`]
      : []),
  ]
}

/** What has to be said in words, since the part is too small or too full for its mark. */
function noRoom(served: Served, { shown, grain, referenceEnd }: OnPart): readonly string[] {
  const edge = served.part.faceEdge === 'bottom' ? 'lower' : 'upper'
  return [
    ...(shown.name ? [] : [`No room for the name, ${pieceName(served)}: write it on the piece.`]),
    ...(shown.faceEdge ? [] : [`The face edge is the ${edge} one.`]),
    ...(shown.referenceEnd ? [] : [`The reference end is at the ${referenceEnd}.`]),
    ...(shown.grain ? [] : [`The grain runs ${grain === 'along' ? 'from end to end' : 'up and down'}.`]),
  ]
}

/** What the marks of bores that lean mean. */
function leaningLegend({ features }: Solid): readonly string[] {
  const leaning = features.flatMap(({ face, shape }) =>
    shape.kind === 'bore' && shape.lean ? [{ face, through: shape.depth === 'through' }] : [],
  )
  const here = leaning.some(({ face }) => face === 'front')
  const dashed = leaning.some(({ face, through }) => face === 'front' && through)
  const others = leaning.some(({ face, through }) => face !== 'front' && through)
  return [
    ...(here
      ? [
          'Line with an arrow: the sight line. A rod in the hole leans the way of the arrow; the bit goes in the other way.',
        ]
      : []),
    ...(dashed ? ['Dashed ellipse: where it comes out on the back.'] : []),
    ...(others ? ['Ellipse without a cross: where a hole of another face comes out.'] : []),
  ]
}

/** A template that guides the bush of a router is not as large as the part. */
function forBush({ templateOffset }: Part, { guided }: OnPart, model: Model): readonly string[] {
  if (templateOffset === undefined) return []
  const by = plain(showSize(templateOffset, model))
  if (!guided)
    return [`The part is too narrow for a template ${by} inside its edge: this one is its true outline.`]
  return [
    `For the bush of a router: the line is ${by} inside the edge of the part, which is dashed, and as far outside slots and cut-outs.`,
  ]
}

/** A bevel has two lines, of which the saw sees one. */
function forBevel({ pieces }: Served): readonly string[] {
  const bevelled = pieces[0].solid.features.some(({ shape }) => shape.kind === 'bevel')
  if (!bevelled) return []
  return ['Dashed: where the back ends at a bevel. Sizes and places are those of the longer face.']
}

function howToCut({ pieces }: Served, { guided }: OnPart): string {
  const bored = pieces[0].solid.features.some(({ shape }) => shape.kind === 'bore')
  const saw = bored
    ? 'Bore first, while the piece is a rectangle; then saw outside the line and sand to it.'
    : 'Saw outside the line and sand to it.'
  return guided
    ? 'The bush runs along the middle of the thin line. Saw the template outside the line and sand to it.'
    : `The middle of the thin line is the edge. ${saw}`
}

function legend({ shown }: OnPart): string {
  const datums = [
    ...(shown.faceEdge ? ['Loop: face side. V: face edge.'] : []),
    ...(shown.referenceEnd ? ['Triangle: reference end.'] : []),
  ]
  return [
    ...datums,
    ...(datums.length > 0 ? ['Measure from these.'] : []),
    ...(shown.waste.through ? ['Hatched: waste.'] : []),
    ...(shown.waste.stopped ? ['Cross-hatched: waste, not through.'] : []),
  ].join(' ')
}
