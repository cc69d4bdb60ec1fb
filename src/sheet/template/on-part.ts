import { pathMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { boundsOfRegions } from '../../geometry/measure/bounds.ts'
import { pointInRegion } from '../../geometry/measure/inside.ts'
import type { Contour, Region } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { CutOut, Groove, Placed, Rebate } from '../../model/feature.ts'
import { finishedOutline, silhouette } from '../../model/finished-outline.ts'
import { engravingMarks } from '../engraving-marks.ts'
import { errorSpotsOn, putErrorSigns } from '../error-signs.ts'
import type { KeyEntry } from '../key/key-entry.ts'
import { emptyBoard } from '../label/board.ts'
import { grown } from '../label/clear-space.ts'
import type { SheetContext } from '../sheet.ts'
import { wayOutMarks } from './bore-marks.ts'
import { putCircleLetters } from './circle-letters.ts'
import { cutMarks } from './cut-marks.ts'
import { type OnWood, putDatum, putFaceMarks } from './edge-marks.ts'
import { referenceEndOf } from './from-datums.ts'
import { guided, guidedCut } from './guide-bush.ts'
import { putLetters, type Unlettered } from './letter-marks.ts'
import { middlesOf, putGrain, putName } from './middle-marks.ts'
import { pieceName, type Served } from './pieces-served.ts'
import { roughCutMarks } from './rough-cut.ts'
import { wasteMarks } from './waste-marks.ts'

/** What stands on the part, and what found room there; the key says the rest in words. */
export type OnPart = {
  readonly marks: readonly Mark[]
  readonly shown: {
    readonly faceEdge: boolean
    readonly referenceEnd: boolean
    readonly name: boolean
    readonly grain: boolean
    readonly waste: { readonly through: boolean; readonly stopped: boolean }
  }
  /** What has no letter beside it for want of room. */
  readonly unlettered: readonly Unlettered[]
  /** The numbers of the errors that are marked. */
  readonly errors: readonly number[]
  /** Grain runs along the longest dimension. Common practice, no source. */
  readonly grain: 'along' | 'across'
  /** The end of the drawing that the reference end is at. */
  readonly referenceEnd: 'left' | 'right'
  /** The line is one for the bush of a router, not the part's edge. */
  readonly guided: boolean
}

/** Everything on the paper that is glued on the wood: lines to work by first, then what helps to find one's way. */
export function onPart(
  served: Served,
  seen: readonly Placed[],
  key: readonly KeyEntry[],
  context: SheetContext,
): OnPart {
  const { workshop, fonts } = context
  const { part, pieces } = served
  const { solid } = pieces[0]
  const edge = finishedOutline(solid)
  const outline = guided(edge, part)
  // under a bevel the wood goes on beyond the line on the front, and is measured from where it ends
  const whole = outline === edge ? silhouette(solid) : outline
  const cuts = seen.map(feature => guidedCut(feature, part))
  const area = boundsOfRegions(whole)
  const board = emptyBoard()
  const cutLines = linesOf(outline)

  board.draw([pathMark({ layer: 'cut', subject: part.id }, 'cut', cutLines)])
  // where a bush runs along that line, the edge that the bit makes lies outside it
  if (outline !== edge) board.draw([pathMark({ layer: 'cut', subject: part.id }, 'hidden', linesOf(edge))])
  board.draw(roughCutMarks(whole, part, workshop))
  const subjectOf = ({ id }: Placed) => `${part.id}.${id}`
  board.draw(cuts.flatMap(feature => cutMarks(feature, subjectOf(feature))))
  board.draw(wayOutMarks(solid, part.id))
  board.draw(cuts.flatMap(feature => engravingMarks(feature, subjectOf(feature), fonts)))
  const spots = errorSpotsOn('front', part, pieces[0].hand, context)
  const errors = putErrorSigns(spots, board, grown(area, lettersBeyond), fonts)
  const unlettered = putLetters(key, part.id, board, grown(area, lettersBeyond), fonts)
  const taken = cuts.flatMap(({ shape }) => (isTaken(shape) ? [shape.region] : []))
  const inOne = (regions: readonly Region[], p: Point) => regions.some(r => pointInRegion(r, p) === 'inside')
  const onWood: OnWood = p => inOne(whole, p) && !inOne(taken, p)
  const onFront: OnWood = p => inOne(outline, p) && !inOne(taken, p)
  const grain = area.top - area.bottom > area.right - area.left ? 'across' : 'along'
  const referenceEnd = referenceEndOf(served)
  const middles = middlesOf(area, onFront)
  const put = {
    faceEdge: putFaceMarks(board, area, part.faceEdge, onWood),
    referenceEnd: putDatum(board, area, referenceEnd === 'right' ? 1 : -1, onWood),
    name: putName(board, middles, pieceName(served), fonts),
    grain: putGrain(board, middles, grain, fonts),
  }
  putCircleLetters(key, part.id, board, grown(area, lettersBeyond), fonts)
  const waste = wasteMarks(cuts, solid.outline, board.taken)
  return {
    marks: [...board.marks, ...waste.through, ...waste.stopped],
    shown: { ...put, waste: { through: waste.through.length > 0, stopped: waste.stopped.length > 0 } },
    unlettered,
    errors,
    grain,
    referenceEnd,
    guided: outline !== edge,
  }
}

/** Where nothing is left of the face to bear a mark that is wanted when the piece is finished. */
function isTaken(shape: Placed['shape']): shape is CutOut | Groove | Rebate {
  return shape.kind === 'cut-out' || shape.kind === 'groove' || shape.kind === 'rebate'
}

function linesOf(regions: readonly Region[]): readonly Contour[] {
  return regions.flatMap(r => [r.outer, ...r.holes])
}

/** How far outside a small part a letter may stand. */
const lettersBeyond = 9
