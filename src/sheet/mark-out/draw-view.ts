import { lettering } from '../../drawing/lettering.ts'
import { linesMark, pathMark, textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { boundsOfMarks } from '../../drawing/mark-bounds.ts'
import { isSide } from '../../finding/face-name.ts'
import { clipPaths } from '../../geometry/cut/clip-path.ts'
import { joinAllBounds, joinBounds, scaleBounds } from '../../geometry/measure/bounds.ts'
import { pointInRegion } from '../../geometry/measure/inside.ts'
import { circle } from '../../geometry/shape/circle.ts'
import type { Bounds, Contour } from '../../geometry/shape/contour.ts'
import { apply, scale } from '../../geometry/shape/matrix.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { transformContour, transformRegion } from '../../geometry/shape/transform.ts'
import type { Placed } from '../../model/feature.ts'
import { finishedOutline } from '../../model/finished-outline.ts'
import { coincident } from '../../number/tolerance.ts'
import type { BitTip } from '../../workshop/workshop.ts'
import { circleOf } from '../circle-of-holes.ts'
import { type Edge, pointBeside } from '../dimension/edge.ts'
import { besideGap, type LaidBeside, layBeside } from '../dimension/lay-beside.ts'
import type { Between, Run, Stop } from '../dimension/run.ts'
import { engravingMarks } from '../engraving-marks.ts'
import { errorSpotsOn, putErrorSigns } from '../error-signs.ts'
import { grouped } from '../grouped.ts'
import type { KeyEntry } from '../key/key-entry.ts'
import { type Board, emptyBoard } from '../label/board.ts'
import { grown } from '../label/clear-space.ts'
import type { SheetContext } from '../sheet.ts'
import { putCircleLetters } from '../template/circle-letters.ts'
import { cutMarks } from '../template/cut-marks.ts'
import { putDatum, putFaceMarks } from '../template/edge-marks.ts'
import { putLetters, type Unlettered } from '../template/letter-marks.ts'
import { type AxisDimensions, axisDimensions, type DimensionFacts } from './dimensions.ts'
import { entriesOn } from './entries-on.ts'
import { innerLines } from './inner-lines.ts'
import { type Note, notesOf } from './notes.ts'
import { edgesSeenFrom } from './outline-lines.ts'
import { putNotes } from './put-notes.ts'
import type { Reduction } from './reduction.ts'
import { scaledFeature } from './scaled-feature.ts'
import type { View } from './view.ts'

/** A view with all that stands beside it; the origin of its face at (0, 0), in the drawing's millimetres. */
export type DrawnView = {
  readonly view: View
  readonly marks: readonly Mark[]
  readonly bounds: Bounds
  readonly dimensions: readonly AxisDimensions[]
  /** How far aside of what it measures the lettering of a dimension stands at most. */
  readonly shift: number
  /** The numbers of the errors that are marked. */
  readonly errors: readonly number[]
  /** What found no room here and has to be said elsewhere. */
  readonly without: {
    readonly stops: readonly { readonly from: string; readonly stops: readonly Stop[] }[]
    readonly between: readonly Between[]
    readonly notes: readonly Note[]
    readonly letters: readonly Unlettered[]
    readonly faceEdge: boolean
    readonly referenceEnd: boolean
  }
}

/** Draws a view at a scale: its lines, dimensions, letters and notes, none of which touches the lettering of another. */
export function drawView(
  view: View,
  { factor, crowding }: Pick<Reduction, 'factor' | 'crowding'>,
  title: string,
  key: readonly KeyEntry[],
  facts: DimensionFacts,
  context: SheetContext,
): DrawnView {
  const { workshop, fonts } = context
  const { part, model } = facts
  const by = scale(factor)
  const board = emptyBoard()
  const box = scaleBounds(view.box, factor)
  const own = view.own.map(feature => scaledFeature(feature, factor))
  drawWood(view, factor, part, workshop.bits, board)
  const subjectOf = ({ id }: Placed): string => `${part.id}.${id}`
  board.draw(own.flatMap(feature => cutMarks(feature, subjectOf(feature))))
  board.draw(own.flatMap(feature => engravingMarks(feature, subjectOf(feature), fonts)))
  board.draw(circleLines(view, by))

  const across = axisDimensions('y', view, factor, facts)
  const along = axisDimensions('x', view, factor, facts)
  // what is cut may stick out of the wood, and what stands beside the ends may reach past the corners
  const lines = boundsOfMarks(fonts, board.marks)
  board.draw([across, along].flatMap(dimensions => centreLine(dimensions, box)))
  const upright = layAxis(across, side => Math.max(besideGap, pastSide(lines, box, side) + pastCut))
  const standing = joinAllBounds([lines, ...upright.flatMap(({ boxes }) => boxes)])
  const level = layAxis(along, side => Math.max(besideGap, pastSide(standing, box, side) + pastCorner))
  const laid = [...upright, ...level]
  for (const { marks, boxes } of laid) {
    board.draw(marks)
    for (const taken of boxes) board.put([], taken)
  }

  const marked = view.face === 'front' ? markDatums(view, factor, facts, along, board, box) : unmarked
  const area = joinBounds(grown(box, notesBeyond), boundsOfMarks(fonts, board.marks))
  const spots = errorSpotsOn(view.face, part, 'drawn', context)
  const signed = spots.map(spot => ({ ...spot, at: apply(by, spot.at) }))
  const errors = putErrorSigns(signed, board, area, fonts)
  const entries = entriesOn(own, key)
  const letters = putLetters(entries, part.id, board, grown(box, notesBeyond), fonts)
  const wantedNotes = notesOf(view, facts.isChamfer, model).map(({ at, words }) => ({
    at: apply(by, at),
    words,
  }))
  const notes = putNotes(wantedNotes, board, area, fonts)
  putCircleLetters(entries, part.id, board, grown(box, notesBeyond), fonts)
  const all = boundsOfMarks(fonts, board.marks)
  const caption = textMark(
    { layer: 'text', subject: 'view' },
    [title],
    { x: box.left, y: all.top + captionGap },
    lettering.medium,
    { weight: 'bold' },
  )
  const marks = [...board.marks, caption]
  return {
    view,
    marks,
    bounds: boundsOfMarks(fonts, marks),
    dimensions: [along, across],
    shift: Math.max(0, ...laid.map(({ shift }) => shift)),
    errors,
    without: {
      stops: [along, across].flatMap(dimensions => droppedStops(dimensions, laid)),
      between: laid.flatMap(({ dropped }) => dropped.between),
      notes,
      letters,
      ...marked,
    },
  }

  function layAxis(
    { fromDatum, fromCentre, between }: AxisDimensions,
    inner: (side: Edge['side']) => number,
  ): readonly LaidBeside[] {
    const first = fromDatum ?? fromCentre
    return [fromDatum, fromCentre].flatMap((one, i) => {
      if (one === undefined) return []
      const pairs = one === first || (i === 0 && first === undefined) ? between : []
      return [layBeside(one.run, pairs, one.edge, inner(one.edge.side), crowding, fonts)]
    })
  }
}

/** How far something reaches past a side of the view. */
function pastSide(reach: Bounds, box: Bounds, side: Edge['side']): number {
  const sign = side === 'left' || side === 'bottom' ? -1 : 1
  return sign * (reach[side] - box[side])
}

/** White between what sticks out of the wood and the dimensions beside it. */
const pastCut = 2.5
/** White between the lettering that reaches past a corner and the dimensions round it. */
const pastCorner = 2
const captionGap = 2
/** How far outside a view its letters and notes may stand. */
const notesBeyond = 14
const unmarked = { faceEdge: true, referenceEnd: true }

/** The edges of the wood, and what is cut into other faces as far as this one shows it. */
function drawWood(
  view: View,
  factor: number,
  part: DimensionFacts['part'],
  bits: BitTip,
  board: Board,
): void {
  const { face, wood, box, others } = view
  const { drawn } = part
  const by = scale(factor)
  const belongs = { layer: 'cut', subject: part.id } as const
  const at = (contours: readonly Contour[]): readonly Contour[] => contours.map(c => transformContour(c, by))
  board.draw([pathMark(belongs, 'wide', at(wood.flatMap(({ outer, holes }) => [outer, ...holes])))])
  const flat = face === 'front' || face === 'back'
  if (!flat && isSide(face)) {
    const level = face === 'top' || face === 'bottom'
    const ends = level ? [box.left, box.right] : [box.bottom, box.top]
    const edges = edgesSeenFrom(face, outlineOf(part)).filter(
      edge => Math.min(...ends.map(end => Math.abs(end - edge.at))) > coincident,
    )
    for (const role of ['wide', 'hidden'] as const) {
      const lines = edges
        .filter(({ hidden }) => hidden === (role === 'hidden'))
        .map(({ at }): [Point, Point] => {
          const ends: [Point, Point] = level
            ? [
                { x: at, y: box.bottom },
                { x: at, y: box.top },
              ]
            : [
                { x: box.left, y: at },
                { x: box.right, y: at },
              ]
          return [apply(by, ends[0]), apply(by, ends[1])]
        })
      if (lines.length > 0) board.draw([linesMark(belongs, role, lines)])
    }
  }
  for (const feature of others) {
    const { seen, hidden } = innerLines(feature, drawn, view, bits)
    const subject = { layer: 'cut', subject: `${part.id}.${feature.id}` } as const
    if (seen.length > 0) board.draw([pathMark(subject, 'cut', at(seen))])
    // beyond a slope or a step there is nothing to be hidden in
    const inWood = flat ? hidden : clipPaths(hidden, wood).flatMap(({ inside }) => inside)
    if (inWood.length > 0) board.draw([pathMark(subject, 'hidden', at(inWood))])
  }
}

/** The circles that the centres of holes lie on. */
function circleLines({ own }: View, by: ReturnType<typeof scale>): readonly Mark[] {
  return [...grouped(own, ({ cut }) => cut).values()].flatMap(holes => {
    const found = holes[0]!.row?.pattern === 'circle' ? circleOf(holes) : undefined
    if (found === undefined) return []
    const line = transformContour(circle(found.centre, found.radius), by)
    return [pathMark({ layer: 'dimension', subject: holes[0]!.cut }, 'centre', [line])]
  })
}

/** From a little beyond one side of the view to where the dimensions from it begin beyond the other. */
function centreLine({ fromCentre, axis }: AxisDimensions, box: Bounds): readonly Mark[] {
  if (fromCentre === undefined) return []
  const { edge, at } = fromCentre
  const far = axis === 'x' ? box.top - box.bottom : box.right - box.left
  const ends: [Point, Point] = [pointBeside(edge, at, besideGap - 1.5), pointBeside(edge, at, -far - 2)]
  return [linesMark({ layer: 'dimension', subject: 'centre' }, 'centre', [ends])]
}

/** The pencil marks of face edge and reference end, where they find room; says which do. */
function markDatums(
  { wood, own }: View,
  factor: number,
  { part }: DimensionFacts,
  { datum }: AxisDimensions,
  board: Board,
  box: Bounds,
): { readonly faceEdge: boolean; readonly referenceEnd: boolean } {
  const by = scale(factor)
  const regions = wood.map(region => transformRegion(region, by))
  const gone = own.flatMap(({ shape }) =>
    shape.kind === 'cut-out' ? [transformRegion(shape.region, by)] : [],
  )
  const onWood = (p: Point): boolean =>
    regions.some(r => pointInRegion(r, p) === 'inside') && !gone.some(r => pointInRegion(r, p) === 'inside')
  return {
    faceEdge: putFaceMarks(board, box, part.faceEdge, onWood),
    referenceEnd: putDatum(board, box, datum.inward === 1 ? -1 : 1, onWood),
  }
}

function outlineOf({ drawn }: DimensionFacts['part']) {
  return finishedOutline(drawn)
}

function droppedStops(
  { datum, fromDatum, fromCentre }: AxisDimensions,
  laid: readonly LaidBeside[],
): DrawnView['without']['stops'] {
  const lost = (one: { readonly run: Run } | undefined): readonly Stop[] => {
    const own = new Set(one?.run.stops)
    return laid.flatMap(({ dropped }) => dropped.stops.filter(stop => own.has(stop)))
  }
  return [
    { from: datum.name, stops: lost(fromDatum) },
    { from: 'centre line', stops: lost(fromCentre) },
  ].filter(({ stops }) => stops.length > 0)
}
