import type { Placed } from '../../model/feature.ts'
import type { Model, Part } from '../../model/part.ts'
import { plain } from '../../text/words.ts'
import { entryLine } from '../key/entry-line.ts'
import type { KeyEntry } from '../key/key-entry.ts'
import type { KeyLine } from '../key/key-table.ts'
import { elsewhereWords, missingWords, sideNames } from '../key/key-words.ts'
import type { SheetContext } from '../sheet.ts'
import { showSize } from '../show-size.ts'
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
  const { model } = context
  const { part, pieces } = served
  const size = [
    ...showSize(part.length, model),
    ' × ',
    ...showSize(part.width, model),
    ' × ',
    ...showSize(part.thickness, model),
  ]
  const stock = [part.stock, part.wood].filter(s => s !== undefined).join(', ')
  const remarks = [
    `${transferWords(transferOf(part, context))}.`,
    ...(pieces.length > 1 ? [`Print this page ${pieces.length} times, once for each piece.`] : []),
    ...notOnPaper(served, elsewhere),
    ...(part.note === undefined ? [] : [part.note]),
    ...noRoom(served, drawn),
    legend(drawn),
    ...forBush(part, drawn, model),
    howToCut(served),
    ...(drawn.unlettered.length > 0 ? [unletteredWords] : []),
  ]
  const places = placeRows(drawn.unlettered, served, context)
  return [
    ...key.map(entry => entryLine(entry, model)),
    { kind: 'size', words: [...size, ...(stock === '' ? [] : [`  ${stock}`])] },
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

function howToCut({ pieces }: Served): string {
  const bored = pieces[0].solid.features.some(({ shape }) => shape.kind === 'bore')
  const saw = bored
    ? 'Bore first, while the piece is a rectangle; then saw outside the line and sand to it.'
    : 'Saw outside the line and sand to it.'
  return `The middle of the thin line is the edge. ${saw}`
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
