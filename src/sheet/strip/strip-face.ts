import { linesMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { showLength } from '../../length/show-length.ts'
import type { Part, Piece } from '../../model/part.ts'
import type { SheetContext } from '../sheet.ts'
import { showSize } from '../show-size.ts'
import { boreMarks, boreReach } from '../template/bore-marks.ts'
import { borderWords } from './border-words.ts'
import { endTab } from './fence-dimension.ts'
import type { FencedFace, FenceSetting } from './fence-settings.ts'
import { ruler, rulerHeight } from './ruler.ts'
import { runningLabels } from './running-labels.ts'
import { type Arrangement, type StripLine, wordsOver } from './words-over.ts'

/** What lies on the wood of one face, and above it on the paper: y from the fence, x from the reference end. */
export type StripFace = {
  readonly marks: readonly Mark[]
  /** A hole with its label, for each: no seam goes through them. */
  readonly whole: readonly Bounds[]
  /** How far the paper reaches up, from the reference end into the wood, and out over the end. */
  readonly top: number
  readonly reach: number
  readonly tab: number
  /** How far a cross reaches over the fence. */
  readonly over: number
  /** Every so many-th hole has its distance over it. */
  readonly every: number
}

const white = 1.2
/** Beside the far edge of the wood, so that it is not taken for a line of the ruler. */
const edgeWhite = 2.5
/** Paper beyond the far end of the wood; half of the ruler's last number stands on it. */
const beyond = 6

export function stripFace(
  { frame, holes }: FencedFace,
  setting: FenceSetting,
  lines: readonly StripLine[],
  letterOf: (feature: FencedFace['holes'][number]['feature']) => string | undefined,
  part: Part,
  hand: Piece['hand'],
  arrangement: Arrangement,
  { model, fonts }: SheetContext,
): StripFace {
  const { fence } = setting
  const { toward, length, breadth } = frame
  const at = (along: number, y: number): Point => ({ x: toward * along, y })
  const style = { unit: model.units, precision: model.precision }
  const running = holes.map(({ feature, bore, distance }) => ({
    centre: bore.centre,
    reach: boreReach(feature.shape),
    distance: showLength(distance, style, { unitMark: false }),
    letter: letterOf(feature),
    subject: `${part.id}.${feature.id}`,
  }))
  const crossesTop = fence + Math.max(...running.map(({ reach }) => reach))
  const { over, before } = strayOf(setting)

  const clearOfEdge = clearOf(breadth)
  // clear of the tab; on the other side the paper reaches as far as it has to
  const within = toward === 1 ? { from: white, to: Infinity } : { from: -Infinity, to: -white }
  const labelsFrom = Math.max(over, crossesTop) + white
  const free = runningLabels(running, labelsFrom, within, fonts)
  const labelsOver = clearOfEdge(labelsFrom, free.top)
  const labels = labelsOver === labelsFrom ? free : runningLabels(running, labelsOver, within, fonts)
  const rulerAt = clearOfEdge(labels.top + white, labels.top + white + rulerHeight)
  const wordsFrom = rulerAt + rulerHeight + white
  const words = wordsOver(lines, frame, arrangement, fonts)
  const wordsAt = clearOfEdge(wordsFrom, wordsFrom + words.height)
  const shown = showSize({ mm: fence, basis: 'derived' }, model)
  // a row that runs off the part is shown as it would be bored
  const pastEnd = labels.boxes.map(({ left, right }) => (toward === 1 ? right : -left))
  const tab = endTab(
    Math.max(0, fence),
    before === 0 ? 0 : before + white,
    shown,
    borderWords(frame.reference, part, hand),
    toward,
    fonts,
  )
  const top = Math.max(wordsAt + words.height + white, tab.top)
  const reach = Math.max(length, words.width, ...pastEnd) + beyond
  const marks = [
    linesMark(fold('fence'), 'fold', [[at(-tab.dimensionAt - white, 0), at(reach, 0)]]),
    linesMark(fold('reference-end'), 'fold', [[at(0, 0), at(0, labelsFrom)]]),
    linesMark(fold('other-end'), 'cut', [[at(length, 0), at(length, labelsFrom)]]),
    ...(breadth < top
      ? [linesMark(fold('far-edge'), 'hidden', [[at(0, breadth), at(length, breadth)]])]
      : []),
    linesMark(fold('fence-line'), 'centre', centreLine(running, at, tab.dimensionAt, length, fence)),
    ...holes.flatMap(({ feature, bore }) => boreMarks(bore, `${part.id}.${feature.id}`, false)),
    ...labels.marks,
    ...ruler(length, toward, rulerAt, model.units, 'ruler'),
    ...words.marksFrom(wordsAt),
    ...tab.marks,
  ]
  return { marks, whole: labels.boxes, top, reach, tab: tab.reach, over, every: labels.every }
}

/** How far the crosses of a setting, of both its faces, reach over the fence and over the reference end. */
function strayOf({ fence, faces }: FenceSetting): { readonly over: number; readonly before: number } {
  const holes = faces.flatMap(face => face.holes)
  const reaches = holes.map(({ feature }) => boreReach(feature.shape))
  return {
    over: Math.max(0, ...reaches.map(reach => reach - fence)),
    before: Math.max(0, ...reaches.map((reach, i) => reach - holes[i]!.distance)),
  }
}

function fold(subject: string) {
  return { layer: 'dimension', subject } as const
}

/** Lifts what would stand on the far edge of the wood over it. */
function clearOf(edge: number): (from: number, to: number) => number {
  return (from, to) => (from - edgeWhite < edge && to + edgeWhite > edge ? edge + edgeWhite : from)
}

/** The line through all centres, which leaves the crosses free. */
function centreLine(
  holes: readonly { readonly centre: Point; readonly reach: number }[],
  at: (along: number, y: number) => Point,
  out: number,
  length: number,
  fence: number,
): readonly (readonly [Point, Point])[] {
  const ends = [at(-out, fence).x, at(length, fence).x].sort((a, b) => a - b)
  const sorted = holes.toSorted((a, b) => a.centre.x - b.centre.x)
  const pieces: (readonly [Point, Point])[] = []
  let from = ends[0]!
  for (const { centre, reach } of sorted) {
    if (centre.x - reach > from)
      pieces.push([
        { x: from, y: fence },
        { x: centre.x - reach, y: fence },
      ])
    from = Math.max(from, centre.x + reach)
  }
  if (ends[1]! > from)
    pieces.push([
      { x: from, y: fence },
      { x: ends[1]!, y: fence },
    ])
  return pieces
}
