import { lettering } from '../../drawing/lettering.ts'
import { pathMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { boundsOfRegions } from '../../geometry/measure/bounds.ts'
import { pointInRegion } from '../../geometry/measure/inside.ts'
import type { Bounds, Region } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Placed } from '../../model/feature.ts'
import { finishedOutline } from '../../model/finished-outline.ts'
import { placeOfMirrored } from '../../model/mirror.ts'
import type { KeyEntry } from '../key/key-entry.ts'
import { type Board, emptyBoard } from '../label/board.ts'
import { grown } from '../label/clear-space.ts'
import { spreadFrom } from '../label/find-place.ts'
import { label } from '../label/place-text.ts'
import type { SheetContext } from '../sheet.ts'
import { cutMarks } from './cut-marks.ts'
import { datumExtent, datumTriangle, faceMarkExtent, faceMarks } from './face-marks.ts'
import { grainArrow, grainArrowBreadth } from './grain-arrow.ts'
import { putLetters } from './letter-marks.ts'
import { pieceName, type Served } from './pieces-served.ts'
import { roughCutMarks } from './rough-cut.ts'
import { wasteMarks } from './waste-marks.ts'

/** Everything on the paper that is glued on the wood: lines to work by first, then what helps to find one's way. */
export function onPart(
  served: Served,
  seen: readonly Placed[],
  key: readonly KeyEntry[],
  context: SheetContext,
): readonly Mark[] {
  const { part, pieces } = served
  const { solid, hand } = pieces[0]
  const outline = finishedOutline(solid)
  const area = boundsOfRegions(outline)
  const board = emptyBoard()

  board.draw([
    pathMark(
      { layer: 'cut', subject: part.id },
      'cut',
      outline.flatMap(r => [r.outer, ...r.holes]),
    ),
  ])
  board.draw(roughCutMarks(outline, part, context.workshop))
  board.draw(seen.flatMap(feature => cutMarks(feature, `${part.id}.${feature.id}`)))
  putLetters(key, board, grown(area, lettersBeyond), context.fonts)
  const onWood = (p: Point): boolean => outline.some(region => pointInRegion(region, p) === 'inside')
  putFaceMarks(board, area, part.faceEdge, onWood)
  const end = hand === 'mirrored' ? placeOfMirrored(part.referenceEnd) : part.referenceEnd
  putDatum(board, area, end === 'right' ? 1 : -1, onWood)
  putName(board, area, pieceName(served), context, onWood)
  putGrain(board, area, context)

  return [...board.marks, ...wasteMarks(seen, board.taken), ...roughCutMarks(outline, part, context.workshop)]
}

/** How far outside a small part a letter may stand. */
const lettersBeyond = 9

/** The marks stand on the edge, so only what is above them has to be clear; and the edge has to be there. */
function putFaceMarks(
  board: Board,
  area: Bounds,
  faceEdge: 'top' | 'bottom',
  onWood: (p: Point) => boolean,
): void {
  const up = faceEdge === 'bottom' ? 1 : -1
  const edge = faceEdge === 'bottom' ? area.bottom : area.top
  for (const size of [1, 0.75, 0.5]) {
    const width = faceMarkExtent.width * size
    const height = faceMarkExtent.height * size
    const lifted = lift
    const middles = spots(area.left + width, area.right - width).map(x => ({
      x,
      y: edge + up * (height / 2 + lifted),
    }))
    const standing = middles.filter(({ x }) =>
      [-1, 0, 1].every(i => onWood({ x: x + (i * width) / 2, y: edge + up * lifted })),
    )
    const extent = { width, height: height - lift }
    if (
      board.place(standing, extent, area, at =>
        faceMarks({ x: at.x, y: at.y - up * lifted }, size, faceEdge),
      ) !== undefined
    )
      return
  }
}

/** What stands on an edge is tested this far above it, so that the edge itself does not count as touched. */
const lift = 0.8

function putDatum(board: Board, area: Bounds, end: 1 | -1, onWood: (p: Point) => boolean): void {
  const { width, height } = datumExtent
  const x = (end === 1 ? area.right : area.left) - end * (width / 2 + lift)
  const middles = spots(area.bottom + height, area.top - height).map(y => ({ x, y }))
  const standing = middles.filter(({ y }) => onWood({ x: x + end * (width / 2), y }))
  board.place(standing, { width: width - lift, height }, area, at => [
    datumTriangle({ x: at.x + end * lift, y: at.y }, end),
  ])
}

/** Places along a stretch: a third of the way, where marks are looked for, then everywhere. */
function spots(from: number, to: number): readonly number[] {
  if (to < from) return [(from + to) / 2]
  const steps = 24
  return Array.from(
    { length: steps + 1 },
    (_, i) => from + (((i + steps / 3) % (steps + 1)) / steps) * (to - from),
  )
}

/** The name of the piece, as large as there is room for, along the part or else across it. */
function putName(
  board: Board,
  area: Bounds,
  name: string,
  { fonts }: SheetContext,
  onWood: (p: Point) => boolean,
): void {
  const middle = { x: (area.left + area.right) / 2, y: (area.bottom + area.top) / 2 }
  const middles = spreadFrom(middle, area, 2).filter(onWood)
  for (const height of [lettering.large, lettering.medium, lettering.small]) {
    for (const upward of [false, true]) {
      const { extent, markAt } = label(fonts, [name], height, 'piece', { weight: 'bold', upward })
      if (board.place(middles, extent, area, at => [markAt(at)]) !== undefined) return
    }
  }
}

/** Grain runs along the longest dimension. Common practice, no source. */
function putGrain(board: Board, area: Bounds, { fonts }: SheetContext): void {
  const upward = area.top - area.bottom > area.right - area.left
  const word = label(fonts, ['grain'], lettering.medium, 'grain', { upward })
  const middle = { x: (area.left + area.right) / 2, y: (area.bottom + area.top) / 2 }
  const wordLength = upward ? word.extent.height : word.extent.width
  const wordBreadth = upward ? word.extent.width : word.extent.height
  for (const length of [40, 28, 18]) {
    const total = length + 2 + wordLength
    const breadth = Math.max(wordBreadth, grainArrowBreadth)
    const extent = upward ? { width: breadth, height: total } : { width: total, height: breadth }
    const along = (at: Point, by: number): Point =>
      upward ? { x: at.x, y: at.y + by } : { x: at.x + by, y: at.y }
    const placed = board.place(spreadFrom(middle, area, 2), extent, area, at => [
      ...grainArrow(along(at, (total - length) / 2), length, upward ? 'across' : 'along'),
      word.markAt(along(at, (wordLength - total) / 2)),
    ])
    if (placed !== undefined) return
  }
}
