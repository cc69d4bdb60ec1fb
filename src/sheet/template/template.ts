import type { Drawing } from '../../drawing/drawing.ts'
import { textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { boundsOfMarks } from '../../drawing/mark-bounds.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Part, Piece } from '../../model/part.ts'
import { errorWords } from '../error-words.ts'
import { keyOf } from '../key/key-entry.ts'
import type { KeyLine } from '../key/key-table.ts'
import type { Sheet, SheetContext, SheetMaker } from '../sheet.ts'
import { titleUnder } from '../title.ts'
import { transferOf } from '../transfer.ts'
import { withWords } from '../with-words.ts'
import { seenFromFront } from './cut-marks.ts'
import { keyLines } from './key-lines.ts'
import { type OnPart, onPart } from './on-part.ts'
import { handsOf, pieceName, piecesInWords, type Served } from './pieces-served.ts'

/** True-size templates, to be glued on the face side, of the parts that get one: one for each piece, or one for each hand. */
export const templateSheets: SheetMaker = context =>
  context.model.parts.flatMap(part =>
    transferOf(part, context).by === 'template' ? templatesFor(part, context) : [],
  )

/** The templates of a part, whether it gets one on paper or is only cut by a machine. */
export function templatesFor(part: Part, context: SheetContext): readonly Sheet[] {
  return handsOf(part).flatMap(served => templatesOf(served, context))
}

/** The template of a hand, or those of its pieces: the first has the key, and the others say where that is. */
function templatesOf(hand: Served, context: SheetContext): readonly Sheet[] {
  const { part, pieces } = hand
  const forEach = context.copies === 'piece' && pieces.length > 1
  // names of the pieces that come before are no longer, so they have room where the last one's has
  const drawn = forEach ? { part, pieces: [pieces.at(-1)!] as const } : hand
  const { seen, elsewhere } = seenFromFront(pieces[0].solid)
  const key = keyOf(seen)
  const on = onPart(drawn, seen, key, context)
  const box = boundsOfMarks(context.fonts, on.marks)
  if (!forEach) return [withKey(hand, on, box, keyLines(hand, key, elsewhere, on, context), context)]
  return pieces.map((piece, i) => {
    const served: Served = { part, pieces: [piece] }
    const drawnOn = { ...on, marks: renamed(on.marks, pieceName(served)) }
    return i === 0
      ? withKey(served, drawnOn, box, keyLines(served, key, elsewhere, on, context), context)
      : withoutKey(served, drawnOn, box, key.length > 0 ? pieces[0] : undefined, context)
  })
}

function renamed(marks: readonly Mark[], name: string): readonly Mark[] {
  return marks.map(mark =>
    mark.kind === 'text' && mark.subject === 'piece'
      ? textMark(mark, [name], mark.at, mark.height, mark)
      : mark,
  )
}

type Signed = Pick<OnPart, 'marks' | 'errors'>

function withKey(
  served: Served,
  { marks, errors }: Signed,
  box: Bounds,
  lines: readonly KeyLine[],
  context: SheetContext,
): Sheet {
  const about = aboutSheet(served, context)
  const title = [titleOf(served), ...errorWords(served.part, context, errors)]
  return {
    id: about.id,
    kind: 'template',
    part: served.part.id,
    forMachine: `${served.part.id}-template${mirroredSuffix(served)}`,
    ...withWords({ about, marks, box, title, lines }, context.fonts),
  }
}

/** `keyAt` is the piece that the key stands beside, where there is anything to look up in it. */
function withoutKey(
  served: Served,
  { marks, errors }: Signed,
  box: Bounds,
  keyAt: Piece | undefined,
  context: SheetContext,
): Sheet {
  const words = `${titleOf(served)}${keyAt === undefined ? '' : `; letters as beside ${keyAt.id}`}`
  const title = [words, ...errorWords(served.part, context, errors)]
  const all = [...marks, ...titleUnder(title, box, context.fonts)]
  const about = aboutSheet(served, context)
  const drawing = { ...about, marks: all, bounds: boundsOfMarks(context.fonts, all), keepWhole: [] }
  return { id: about.id, kind: 'template', part: served.part.id, drawings: [drawing] }
}

function aboutSheet(served: Served, { model, copies }: SheetContext): Pick<Drawing, 'id' | 'caption'> {
  const { part, pieces } = served
  const { number } = pieces[0]
  // what tells the sheets apart stands last, so that no two parts, whatever they are called, have the same id
  const apart = copies === 'piece' && part.pieces.length > 1 ? `-${number}` : mirroredSuffix(served)
  return {
    id: `${part.id}-template${apart}`,
    caption: {
      plan: model.title,
      sheet: 'template for the face side',
      part: part.label,
      pieces: piecesInWords(served),
    },
  }
}

function mirroredSuffix({ pieces }: Served): string {
  return pieces[0].hand === 'mirrored' ? '-mirrored' : ''
}

function titleOf(served: Served): string {
  return `${served.part.label} · ${piecesInWords(served)}`
}
