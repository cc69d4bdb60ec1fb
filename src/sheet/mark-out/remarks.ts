import type { Part, Piece } from '../../model/part.ts'
import { plain, type Words } from '../../text/words.ts'
import type { KeyLine } from '../key/key-table.ts'
import type { SheetContext } from '../sheet.ts'
import { sizeAndStock } from '../size-words.ts'
import { notOnPaper } from '../template/key-lines.ts'
import { transferOf, transferWords } from '../transfer.ts'
import type { DrawnView } from './draw-view.ts'

/** "2 pieces, 1 of them mirrored". */
export function piecesInWords({ pieces }: Pick<Part, 'pieces'>): string {
  const mirrored = pieces.filter(({ hand }) => hand === 'mirrored').length
  const count = pieces.length === 1 ? '1 piece' : `${pieces.length} pieces`
  return mirrored === 0 ? count : `${count}, ${mirrored} of them mirrored`
}

/**
 * Beside the views: the whole size, why it is marked out, how it is measured, and what is not in the drawing. `free` where
 * the views stand by themselves, `tableApart` says where the table is when it is on other paper.
 */
export function remarksOf(
  part: Part,
  views: readonly DrawnView[],
  { free, tableApart }: { readonly free: boolean; readonly tableApart?: string },
  context: SheetContext,
): readonly KeyLine[] {
  const { model } = context
  const [first] = part.pieces
  const remarks = [
    `${howToMeasure(views, model.units)} ${transferWords(transferOf(part, context))}`,
    ...(free ? ['Each view shows the side that it names as you see it when you look straight at it.'] : []),
    ...mirroredWords(part),
    ...(first === undefined ? [] : notOnPaper({ part, pieces: [first] }, [])),
    ...(part.note === undefined ? [] : [part.note]),
    ...noRoom(part, views),
    ...(leftToTable(views) ? ['Where a hole has no size in the drawing, the table says where it is.'] : []),
    ...(tableApart === undefined ? [] : [tableApart]),
  ]
  return [
    { kind: 'size', words: sizeAndStock(part, model) },
    ...remarks.map((text): KeyLine => ({ kind: 'remark', text })),
  ]
}

function howToMeasure(views: readonly DrawnView[], units: 'inch' | 'mm'): string {
  const unit = units === 'inch' ? 'inches' : 'millimetres'
  const centred = views.some(({ dimensions }) =>
    dimensions.some(({ fromCentre }) => fromCentre !== undefined),
  )
  const between = views.some(({ dimensions }) => dimensions.some(one => one.between.length > 0))
  return [
    `Sizes in ${unit}, all from the ring where their line begins: from the face edge (V), the reference end (triangle) and the face side.`,
    ...(centred
      ? ['What stands on the middle: find the middle of your piece, and measure both ways from there.']
      : []),
    ...(between ? ['A size between two arrows has to match another part: hold to it.'] : []),
  ].join(' ')
}

/** The other hand has the same real edges, so it has the same sizes. */
function mirroredWords({ pieces, faceEdge, referenceEnd }: Part): readonly string[] {
  const mirrored = pieces.filter(({ hand }) => hand === 'mirrored')
  if (mirrored.length === 0) return []
  const other = referenceEnd === 'left' ? 'right' : 'left'
  const edge = faceEdge === 'bottom' ? 'down' : 'up'
  return [
    `Mirrored: ${numbers(mirrored)}. The same sizes from the same face edge and reference end; but with the face side toward you and the face edge ${edge}, its reference end is at the ${other}. Set out both hands side by side, reference ends level, and square the lines across both.`,
  ]
}

function numbers(pieces: readonly Piece[]): string {
  const [first, last] = [pieces[0]!.id, pieces.at(-1)!.number]
  return pieces.length === 1 ? first : `${first}–${last}`
}

/** Whether sizes are left out that need no words, since the table has them. */
function leftToTable(views: readonly DrawnView[]): boolean {
  return views.some(({ without }) =>
    without.stops.some(({ stops }) => stops.some(({ tabled }) => tabled === true)),
  )
}

/** What is said in words, since the drawing has no room for it and the table does not have it. */
function noRoom(part: Part, views: readonly DrawnView[]): readonly string[] {
  const sizes = (all: readonly { readonly words: Words }[]): string =>
    all.map(({ words }) => plain(words)).join(', ')
  const of = ({ view }: DrawnView): string =>
    views.length > 1 ? ` on the ${view.face.replace('edge:', 'edge ')}` : ''
  return views.flatMap(view => {
    const { stops, between, notes, letters, faceEdge, referenceEnd } = view.without
    return [
      ...(faceEdge ? [] : [`The face edge is the ${part.faceEdge === 'bottom' ? 'lower' : 'upper'} one.`]),
      ...(referenceEnd ? [] : [`The reference end is at the ${part.referenceEnd}.`]),
      ...stops.flatMap(({ from, stops }) => {
        const untabled = stops.filter(({ tabled }) => tabled !== true)
        return untabled.length > 0
          ? [`No room for these${of(view)}, from the ${from}: ${sizes(untabled)}.`]
          : []
      }),
      ...between.map(({ says, words }) => `${says}: ${plain(words)}.`),
      ...(notes.length > 0 ? [`No room for these${of(view)}: ${sizes(notes)}.`] : []),
      ...(letters.length > 0
        ? [
            `No room for ${letters.length === 1 ? 'a letter' : `${letters.length} letters`}${of(view)}: the table says which stands where.`,
          ]
        : []),
    ]
  })
}
