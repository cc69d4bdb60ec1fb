import type { Caption, Drawing } from '../../drawing/drawing.ts'
import { lettering } from '../../drawing/lettering.ts'
import { textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { boundsOfMarks } from '../../drawing/mark-bounds.ts'
import { moveMark } from '../../drawing/transform-mark.ts'
import { wrap } from '../../drawing/wrap.ts'
import { type FaceName, isSide, sayFace } from '../../finding/face-name.ts'
import { boundsOfRegions, joinBounds, scaleBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { isPlaced } from '../../model/feature.ts'
import type { Model, Part } from '../../model/part.ts'
import type { Fonts } from '../../text/fonts.ts'
import { asFarAsLookedAt } from '../as-far-as-looked-at.ts'
import { chamferedIn } from '../chamfered.ts'
import { closest } from '../dimension/spread-run.ts'
import { errorWords } from '../error-words.ts'
import { keyOf } from '../key/key-entry.ts'
import { keyTable } from '../key/key-table.ts'
import { sideNames } from '../key/key-words.ts'
import { once, onceForEach } from '../once.ts'
import type { Otherwise, Sheet, SheetContext, SheetMaker } from '../sheet.ts'
import { titleMarks } from '../title.ts'
import { transferOf } from '../transfer.ts'
import { whenLookedAt } from '../when-looked-at.ts'
import {
  type Arrangement,
  arrangementsOf,
  arrangeViews,
  freely,
  inTwo,
  isProjected,
} from './arrange-views.ts'
import { chooseViews } from './choose-views.ts'
import type { DimensionFacts } from './dimensions.ts'
import { type DrawnView, drawView } from './draw-view.ts'
import { matchedPairs } from './matched-pairs.ts'
import { hangLines, placeLines, type TableLine } from './place-lines.ts'
import { projectionSymbol, projectionSymbolExtent } from './projection-symbol.ts'
import { type Reduction, reductions } from './reduction.ts'
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
/** A longer table is always apart, in pieces of so many lines as a page holds, or a small one. */
const mostLines = 26
const tableSizes = [
  { width: wideKey, most: 28 },
  { width: narrowKey, most: 14 },
] as const

/** The table stands with the words, or in other places, which these words tell. */
type Listed = 'here' | string

type Drawn = { readonly marks: readonly Mark[]; readonly bounds: Bounds }

function markOutOf(part: Part, context: SheetContext): readonly Sheet[] {
  const { model, fonts } = context
  const key = keyOf(part.drawn.features.filter(isPlaced))
  const facts = factsOf(part, model)
  const views = chooseViews(part).map(face => viewOf(part, face))
  const table = onceForEach((width: number) =>
    views.flatMap(view => placeLines(view, titleOf(view, part), key, width, facts, context)),
  )
  const tables = tableSizes.map(({ width, most }) =>
    once(() => tableDrawings(part, table(width), width, most, context)),
  )
  const long = table(wideKey).length > mostLines
  const viewsAt = onceForEach((reduction: Reduction) =>
    views.map(view => drawView(view, reduction, titleOf(view, part), key, facts, context)),
  )
  const wordsOf = (
    reduction: Reduction,
    projected: boolean,
    listed: Listed,
    at: Point,
    width: number,
  ): readonly Mark[] =>
    wordsBeside(
      part,
      viewsAt(reduction),
      projected,
      listed === 'here' ? table(width) : listed,
      at,
      width,
      context,
    )
  /** Drawings of views, and the words and the table on other paper. */
  const wordsApart = (
    reduction: Reduction,
    drawings: Otherwise['drawings'],
    before: NonNullable<Otherwise['beside']>,
    projected: boolean,
  ): readonly Otherwise[] => {
    const wordsAlone = (width: number, listed: Listed): Drawing => {
      const caption = captionOf(part, model, reduction)
      return whenLookedAt({ id: `${part.id}-mark-out-words`, caption }, () => {
        const marks = wordsOf(reduction, projected, listed, { x: 0, y: 0 }, width)
        return { marks, bounds: boundsOfMarks(fonts, marks) }
      })
    }
    const holds = bare(reduction)
    const whole: Otherwise = {
      drawings,
      holds,
      beside: [...before, [wordsAlone(wideKey, 'here'), wordsAlone(narrowKey, 'here')]],
    }
    const parted = tables.map(
      (tableDrawn): Otherwise => ({
        drawings,
        holds,
        get beside() {
          const drawn = tableDrawn()
          const where = tableWords(part, drawn.length)
          const words = [wordsAlone(wideKey, where), wordsAlone(narrowKey, where)] as const
          return [...before, words, ...drawn]
        },
      }),
    )
    return long ? parted : [whole, ...parted]
  }
  /** Some of the views in one drawing, and the ways in which the words stand with them. */
  const drawingOf = (
    reduction: Reduction,
    faces: readonly FaceName[],
    arrangement: Arrangement,
    projected: boolean,
    id = `${part.id}-mark-out`,
  ): { readonly alone: Drawing; readonly withWords: Otherwise['drawings'] } => {
    const about = { id, caption: captionOf(part, model, reduction) }
    const drawn = once(() => {
      const shown = viewsAt(reduction).filter(({ view }) => faces.includes(view.face))
      return arrangedViews(shown, arrangement, headingOf(part, reduction), context)
    })
    const arranged = (place: (bounds: Bounds) => { readonly at: Point; readonly width: number }): Drawing =>
      whenLookedAt(about, () => {
        const { marks, bounds } = drawn()
        const { at, width } = place(bounds)
        const beside = wordsOf(reduction, projected, 'here', at, width)
        return { marks: [...marks, ...beside], bounds: joinBounds(bounds, boundsOfMarks(fonts, beside)) }
      })
    const below = (width: number): Drawing =>
      arranged(bounds => ({
        at: { x: bounds.left, y: bounds.bottom - gap },
        width: Math.max(bounds.right - bounds.left, width),
      }))
    return {
      alone: whenLookedAt(about, drawn),
      withWords: [
        below(wideKey),
        below(narrowKey),
        arranged(bounds => ({ at: { x: bounds.right + gap, y: bounds.top }, width: columnKey })),
      ],
    }
  }
  const faces = views.map(({ face }) => face)
  /** The bare wood of every view: quicker to know than where its dimensions stand. */
  const bare = ({ factor }: Reduction) =>
    views.map(({ wood }) => ({ bounds: scaleBounds(boundsOfRegions(wood), factor) }))
  const inOneDrawing = (reduction: Reduction, arrangement: Arrangement): readonly Otherwise[] => {
    const projected = isProjected(arrangement)
    const { alone, withWords } = drawingOf(reduction, faces, arrangement, projected)
    const apart = wordsApart(reduction, [alone], [], projected)
    return long ? apart : [{ drawings: withWords, holds: [...bare(reduction), alone] }, ...apart]
  }
  const inTwoDrawings = (reduction: Reduction): readonly Otherwise[] => {
    const [near, others] = inTwo(faces)
    const first = drawingOf(reduction, near, 'about the front', false).alone
    const inRows = (way: Arrangement) => drawingOf(reduction, others, way, false, `${part.id}-mark-out-2`)
    const [row, ...more] = [inRows(freely[0]), ...(others.length > 1 ? freely.slice(1).map(inRows) : [])]
    const alone = [row.alone, ...more.map(one => one.alone)] as const
    const withWords = [...row.withWords, ...more.flatMap(one => one.withWords)] as const
    const apart = wordsApart(reduction, [first], [alone], false)
    return long ? apart : [{ drawings: [first], beside: [withWords], holds: bare(reduction) }, ...apart]
  }
  // as large as the paper holds the views
  const options = asFarAsLookedAt(function* () {
    for (const [i, reduction] of reductions.entries()) {
      // where all dimensions stand close by, leaving some out makes nothing smaller
      if (reduction.crowding === 'those close by' && viewsAt(reductions[i - 1]!).every(standsClose)) continue
      for (const way of arrangementsOf(faces)) yield* inOneDrawing(reduction, way)
      if (faces.length > 1) yield* inTwoDrawings(reduction)
    }
  })
  const [first] = options
  return [
    {
      id: `${part.id}-mark-out`,
      kind: 'mark-out',
      part: part.id,
      drawings: first!.drawings,
      // the first of them is the sheet's own once more, and takes no time
      otherwise: options,
    },
  ]
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
  const name = isSide(face) ? sideNames('drawn', part)(face) : `edge ${sayFace(face)}`
  return face === 'front' ? `${name}, face side` : name
}

/** All views in their places. */
function arrangedViews(
  drawn: readonly DrawnView[],
  arrangement: Arrangement,
  heading: string,
  { model, fonts }: SheetContext,
): Drawn {
  const moves = arrangeViews(drawn, model.projection, arrangement)
  const marks = drawn.flatMap(({ view, marks }) => {
    const { x, y } = moves.get(view.face)!
    return marks.map(mark => moveMark(mark, x, y))
  })
  const all = [...marks, ...headingMarks(heading, boundsOfMarks(fonts, marks), fonts)]
  return { marks: all, bounds: boundsOfMarks(fonts, all) }
}

/** Stands with the views wherever the words beside them may be. */
function headingOf({ label }: Part, { name }: Reduction): string {
  return name === undefined
    ? `${label} · true size`
    : `${label} · reduced ${name}: do not measure this drawing`
}

/** Above everything, in as many lines as its width asks for. */
function headingMarks(words: string, { left, right, top }: Bounds, fonts: Fonts): readonly Mark[] {
  const rows = wrap(words, fonts.bold, lettering.large, Math.max(right - left, narrowHeading))
  return rows.map((row, i) =>
    textMark(
      { layer: 'text', subject: 'heading' },
      [row],
      { x: left, y: top + headingGap + (rows.length - 1 - i) * headingPitch },
      lettering.large,
      { weight: 'bold' },
    ),
  )
}

const narrowHeading = 70
const headingGap = 4
const headingPitch = lettering.large + 2

/** Title, what is to be known, the table, and the symbol of the projection where views stand as it has them. */
function wordsBeside(
  part: Part,
  views: readonly DrawnView[],
  projected: boolean,
  table: readonly TableLine[] | string,
  at: Point,
  width: number,
  context: SheetContext,
): readonly Mark[] {
  const { model, fonts } = context
  const several = views.length > 1 && projected
  const symbol = several
    ? projectionSymbol(model.projection, { x: at.x + width - projectionSymbolExtent.width, y: at.y })
    : []
  const beside = several ? projectionSymbolExtent.width + symbolAside : 0
  const marked = views.flatMap(({ errors }) => errors)
  const title = titleMarks(
    [`${part.label} · ${piecesInWords(part)}`, ...errorWords(part, context, marked)],
    at,
    width - beside,
    fonts,
  )
  const lines = remarksOf(
    part,
    views,
    { free: views.length > 1 && !projected, ...(typeof table === 'string' ? { tableApart: table } : {}) },
    context,
  )
  const below = several ? Math.min(title.bottom, at.y - projectionSymbolExtent.height - 1) : title.bottom
  const key = keyTable(lines, { x: at.x, y: below }, width, fonts)
  const places = hangLines(typeof table === 'string' ? [] : table, { x: at.x, y: key.bottom - 1 }, fonts)
  return [...symbol, ...title.marks, ...key.marks, ...places.marks]
}

const symbolAside = 4

function standsClose({ shift }: DrawnView): boolean {
  return shift <= closest
}

/** What a table by itself is called: pages are shared, so nothing is said of which page it is on. */
function tableTitle({ label }: Part): string {
  return `${label} · where everything stands`
}

function tableWords(part: Part, count: number): string {
  const pieces = count > 1 ? `, which is in ${count} pieces` : ''
  return `Where everything stands is in the table “${tableTitle(part)}”${pieces}.`
}

/** A long table in pieces, each with the part's name over it. */
function tableDrawings(
  part: Part,
  lines: readonly TableLine[],
  width: number,
  most: number,
  { model, fonts }: SheetContext,
): readonly (readonly [Drawing])[] {
  const count = Math.ceil(lines.length / most)
  const caption: Caption = { plan: model.title, sheet: 'table of the mark-out', part: part.label }
  return Array.from({ length: count }, (_, i) => {
    const id = `${part.id}-mark-out-table-${i + 1}`
    const title = `${tableTitle(part)}${count > 1 ? `, ${i + 1} of ${count}` : ''}`
    const head = titleMarks([title], { x: 0, y: 0 }, width, fonts)
    const hung = hangLines(lines.slice(i * most, (i + 1) * most), { x: 0, y: head.bottom }, fonts)
    const marks = [...head.marks, ...hung.marks]
    return [{ id, caption, marks, bounds: boundsOfMarks(fonts, marks), keepWhole: [] }] as const
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
