import { pathMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { boundsOfRegions } from '../../geometry/measure/bounds.ts'
import { pointInRegion } from '../../geometry/measure/inside.ts'
import type { Placed } from '../../model/feature.ts'
import { finishedOutline } from '../../model/finished-outline.ts'
import type { KeyEntry } from '../key/key-entry.ts'
import { emptyBoard } from '../label/board.ts'
import { grown } from '../label/clear-space.ts'
import type { SheetContext } from '../sheet.ts'
import { cutMarks } from './cut-marks.ts'
import { type OnWood, putDatum, putFaceMarks } from './edge-marks.ts'
import { referenceEndOf } from './from-datums.ts'
import { putLetters, type Unlettered } from './letter-marks.ts'
import { middlesOnWood, putGrain, putName } from './middle-marks.ts'
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
  /** Grain runs along the longest dimension. Common practice, no source. */
  readonly grain: 'along' | 'across'
  /** The end of the drawing that the reference end is at. */
  readonly referenceEnd: 'left' | 'right'
}

/** Everything on the paper that is glued on the wood: lines to work by first, then what helps to find one's way. */
export function onPart(
  served: Served,
  seen: readonly Placed[],
  key: readonly KeyEntry[],
  { workshop, fonts }: SheetContext,
): OnPart {
  const { part, pieces } = served
  const { solid } = pieces[0]
  const outline = finishedOutline(solid)
  const area = boundsOfRegions(outline)
  const board = emptyBoard()
  const cutLines = outline.flatMap(r => [r.outer, ...r.holes])

  board.draw([pathMark({ layer: 'cut', subject: part.id }, 'cut', cutLines)])
  board.draw(roughCutMarks(outline, part, workshop))
  board.draw(seen.flatMap(feature => cutMarks(feature, `${part.id}.${feature.id}`)))
  const unlettered = putLetters(key, part.id, board, grown(area, lettersBeyond), fonts)
  const onWood: OnWood = p => outline.some(region => pointInRegion(region, p) === 'inside')
  const grain = area.top - area.bottom > area.right - area.left ? 'across' : 'along'
  const referenceEnd = referenceEndOf(served)
  const middles = middlesOnWood(area, onWood)
  const put = {
    faceEdge: putFaceMarks(board, area, part.faceEdge, onWood),
    referenceEnd: putDatum(board, area, referenceEnd === 'right' ? 1 : -1, onWood),
    name: putName(board, middles, pieceName(served), fonts),
    grain: putGrain(board, middles, grain, fonts),
  }
  const waste = wasteMarks(seen, solid.outline, board.taken)
  return {
    marks: [...board.marks, ...waste.through, ...waste.stopped],
    shown: { ...put, waste: { through: waste.through.length > 0, stopped: waste.stopped.length > 0 } },
    unlettered,
    grain,
    referenceEnd,
  }
}

/** How far outside a small part a letter may stand. */
const lettersBeyond = 9
