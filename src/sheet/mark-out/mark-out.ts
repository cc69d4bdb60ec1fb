import type { Caption, Drawing } from '../../drawing/drawing.ts'
import type { Mark } from '../../drawing/mark.ts'
import { boundsOfMarks } from '../../drawing/mark-bounds.ts'
import { moveMark } from '../../drawing/move-mark.ts'
import { sayFace } from '../../finding/face-name.ts'
import { joinBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { isPlaced } from '../../model/feature.ts'
import type { Model, Part } from '../../model/part.ts'
import { chamferedIn } from '../chamfered.ts'
import { type KeyEntry, keyOf } from '../key/key-entry.ts'
import { keyTable } from '../key/key-table.ts'
import { sideNames } from '../key/key-words.ts'
import type { Otherwise, Sheet, SheetContext, SheetMaker } from '../sheet.ts'
import { titleMarks } from '../title.ts'
import { transferOf } from '../transfer.ts'
import { whenLookedAt } from '../when-looked-at.ts'
import { arrangeViews } from './arrange-views.ts'
import { chooseViews, isSideFace } from './choose-views.ts'
import type { DimensionFacts } from './dimensions.ts'
import { type DrawnView, drawView } from './draw-view.ts'
import { matchedPairs } from './matched-pairs.ts'
import { hangLines, placeLines, type TableLine } from './place-lines.ts'
import { projectionSymbol, projectionSymbolExtent } from './projection-symbol.ts'
import { type Reduction, reductions, trueSize } from './reduction.ts'
import { piecesInWords, remarksOf } from './remarks.ts'
import { isScaledIn } from './scaled-in.ts'
import { type View, viewOf } from './view.ts'

/** Sheets to set out the wood by: the views of every part that is marked out rather than glued over, with their dimensions. */
export const markOutSheets: SheetMaker = context =>
  context.model.parts.flatMap(part =>
    transferOf(part, context).by === 'mark-out' ? markOutOf(part, context) : [],
  )

/** Between the views and the words beside them. */
const gap = 8
const wideKey = 165
const narrowKey = 112
const columnKey = 95
/** A longer table has pages of its own. */
const mostLines = 26
const linesOnPage = 28

type Drawn = {
  readonly marks: readonly Mark[]
  readonly bounds: Bounds
  readonly views: readonly DrawnView[]
}

function markOutOf(part: Part, context: SheetContext): readonly Sheet[] {
  const { model, fonts } = context
  const key = keyOf(part.drawn.features.filter(isPlaced))
  const facts = factsOf(part, model)
  const views = chooseViews(part).map(face => viewOf(part, face))
  const table = (width: number): readonly TableLine[] =>
    views.flatMap(view => placeLines(view, titleOf(view, part), key, width, facts, fonts))
  const apart = table(wideKey).length > mostLines
  const at = (reduction: Reduction): Required<Otherwise> & { readonly alone: readonly [Drawing] } => {
    const about = { id: `${part.id}-mark-out`, caption: captionOf(part, model, reduction) }
    const drawn = once(() => drawViews(views, key, reduction.factor, part, facts, context))
    const words = (at: Point, width: number): readonly Mark[] =>
      wordsBeside(part, drawn().views, reduction, apart ? undefined : table(width), at, width, context)
    const arranged = (place: (bounds: Bounds) => { readonly at: Point; readonly width: number }): Drawing =>
      whenLookedAt(about, () => {
        const { marks, bounds } = drawn()
        const { at, width } = place(bounds)
        const beside = words(at, width)
        return { marks: [...marks, ...beside], bounds: joinBounds(bounds, boundsOfMarks(fonts, beside)) }
      })
    const below = (width: number): Drawing =>
      arranged(bounds => ({
        at: { x: bounds.left, y: bounds.bottom - gap },
        width: Math.max(bounds.right - bounds.left, width),
      }))
    const wordsAlone = (width: number): Drawing =>
      whenLookedAt({ ...about, id: `${about.id}-words` }, () => {
        const marks = words({ x: 0, y: 0 }, width)
        return { marks, bounds: boundsOfMarks(fonts, marks) }
      })
    return {
      drawings: [
        below(wideKey),
        below(narrowKey),
        arranged(bounds => ({ at: { x: bounds.right + gap, y: bounds.top }, width: columnKey })),
      ],
      alone: [whenLookedAt(about, drawn)],
      beside: [wordsAlone(wideKey), wordsAlone(narrowKey)],
    }
  }
  const [full, ...smaller] = [trueSize, ...reductions].map(at)
  const whole: Sheet = {
    id: `${part.id}-mark-out`,
    kind: 'mark-out',
    part: part.id,
    drawings: full!.drawings,
    // true to size before in one piece
    otherwise: [
      { drawings: full!.alone, beside: full!.beside },
      ...smaller.flatMap(({ drawings, alone, beside }) => [{ drawings }, { drawings: alone, beside }]),
    ],
  }
  return apart ? [whole, ...tableSheets(part, table(wideKey), context)] : [whole]
}

function factsOf(part: Part, model: Model): DimensionFacts {
  return {
    part,
    model,
    pairs: matchedPairs(part, model),
    isChamfer: chamferedIn(part),
    isScaled: isScaledIn(part, model),
  }
}

function titleOf({ face }: View, part: Part): string {
  const name = isSideFace(face) ? sideNames('drawn', part)(face) : `edge ${sayFace(face)}`
  return face === 'front' ? `${name}, face side` : name
}

/** All views in their places. */
function drawViews(
  views: readonly View[],
  key: readonly KeyEntry[],
  factor: number,
  part: Part,
  facts: DimensionFacts,
  context: SheetContext,
): Drawn {
  const drawn = views.map(view => drawView(view, factor, titleOf(view, part), key, facts, context))
  const moves = arrangeViews(drawn, context.model.projection)
  const marks = drawn.flatMap(({ view, marks }) => {
    const { x, y } = moves.get(view.face)!
    return marks.map(mark => moveMark(mark, x, y))
  })
  return { marks, bounds: boundsOfMarks(context.fonts, marks), views: drawn }
}

/** Title, what is to be known, the table, and the symbol of the projection where there is more than one view. */
function wordsBeside(
  part: Part,
  views: readonly DrawnView[],
  reduction: Reduction,
  table: readonly TableLine[] | undefined,
  at: Point,
  width: number,
  context: SheetContext,
): readonly Mark[] {
  const { model, fonts } = context
  const several = views.length > 1
  const symbol = several
    ? projectionSymbol(model.projection, { x: at.x + width - projectionSymbolExtent.width, y: at.y })
    : []
  const beside = several ? projectionSymbolExtent.width + symbolAside : 0
  const title = titleMarks(`${part.label} · ${piecesInWords(part)}`, at, width - beside, fonts)
  const lines = remarksOf(part, views, reduction, table === undefined, context)
  const below = several ? Math.min(title.bottom, at.y - projectionSymbolExtent.height - 1) : title.bottom
  const key = keyTable(lines, { x: at.x, y: below }, width, fonts)
  const places = hangLines(table ?? [], { x: at.x, y: key.bottom - 1 }, fonts)
  return [...symbol, ...title.marks, ...key.marks, ...places.marks]
}

const symbolAside = 4

/** A long table on pages of its own. */
function tableSheets(
  part: Part,
  lines: readonly TableLine[],
  { model, fonts }: SheetContext,
): readonly Sheet[] {
  const count = Math.ceil(lines.length / linesOnPage)
  return Array.from({ length: count }, (_, i): Sheet => {
    const id = `${part.id}-mark-out-table-${i + 1}`
    const title = `${part.label} · where everything stands${count > 1 ? `, ${i + 1} of ${count}` : ''}`
    const head = titleMarks(title, { x: 0, y: 0 }, wideKey, fonts)
    const hung = hangLines(
      lines.slice(i * linesOnPage, (i + 1) * linesOnPage),
      { x: 0, y: head.bottom },
      fonts,
    )
    const marks = [...head.marks, ...hung.marks]
    const caption: Caption = { plan: model.title, sheet: 'table of the mark-out', part: part.label }
    return {
      id,
      kind: 'mark-out',
      part: part.id,
      drawings: [{ id, caption, marks, bounds: boundsOfMarks(fonts, marks), keepWhole: [] }],
    }
  })
}

function captionOf(part: Part, model: Model, { name }: Reduction): Caption {
  return {
    plan: model.title,
    sheet: name === undefined ? 'mark-out' : `mark-out, reduced ${name}`,
    part: part.label,
    pieces: piecesInWords(part),
  }
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined
  return () => {
    made ??= { value: make() }
    return made.value
  }
}
