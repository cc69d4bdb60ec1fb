import { linesMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Fonts } from '../../text/fonts.ts'
import { arrowHead, arrowHeads, dimensionDots, dimensionLines, originMark } from './arrow.ts'
import { type Edge, pointBeside } from './edge.ts'
import { layBetween, wayAlong } from './lay-between.ts'
import type { Between, Crowding, Run, Stop } from './run.ts'
import { type SpreadRun, spreadRun } from './spread-run.ts'

/** Dimensions as they stand beside one edge of a view. */
export type LaidBeside = {
  readonly marks: readonly Mark[]
  /** The boxes of the lettering. */
  readonly boxes: readonly Bounds[]
  /** How far out they reach. */
  readonly reach: number
  /** How far aside of what it measures the lettering of a run stands at most. */
  readonly shift: number
  readonly dropped: { readonly stops: readonly Stop[]; readonly between: readonly Between[] }
}

/** White from the view to the nearest dimension line. */
export const besideGap = 5
/** From the dimension line to where extension lines bend toward their lettering, and the white before that. */
const beyondLine = 1.6
const beforeText = 0.8
/** How steep the bent lines are: their height for each millimetre aside. */
const steepness = 0.5
const highestBend = 14

/**
 * Running dimensions beside an edge, with the distances between pairs nearest to the view:
 *
 *      view
 *     ──────────────
 *      │  │←── 4 ──→│      pairs; lines of the run pass between their lettering
 *      ○──→─→───────→      the run's line, from its origin
 *      │  │  \      │
 *      0  1  1 1/4  5
 *
 * Lettering touches neither lettering nor lines: that of a run keeps its order, so that bent lines never cross, and is
 * spread until it stands free; that of a pair stands between two lines or not at all. Takes time in step with the
 * number of dimensions but for putting them in order.
 */
export function layBeside(
  run: Run | undefined,
  pairs: readonly Between[],
  edge: Edge,
  inner: number,
  crowding: Crowding,
  fonts: Fonts,
): LaidBeside {
  const spreadOut = run === undefined ? undefined : spreadRun(run, edge, crowding, fonts)
  const stops = spreadOut?.stops ?? []
  const between = layBetween(
    pairs,
    stops.map(({ stop }) => stop.at),
    edge,
    inner,
    fonts,
  )
  const lineAt = between.reach
  const drawn =
    spreadOut === undefined ? { marks: [], boxes: [], reach: lineAt } : drawRun(spreadOut, edge, lineAt)
  const extensions = new Map<number, { from: number; to: number }>()
  const extend = (at: number, from: number, to: number): void => {
    const known = extensions.get(at)
    extensions.set(at, {
      from: Math.min(known?.from ?? from, from),
      to: Math.max(known?.to ?? to, to),
    })
  }
  for (const { stop } of stops) extend(stop.at, stop.from, lineAt + beyondLine)
  for (const { at, to } of between.lines) extend(at, besideGap / 4, to)
  const lines = [...extensions]
    .filter(([, { from, to }]) => to > from)
    .map(([at, { from, to }]): [Point, Point] => [pointBeside(edge, at, from), pointBeside(edge, at, to)])
  return {
    marks: [
      ...(lines.length > 0 ? [linesMark(dimensionLines, 'thin', lines)] : []),
      ...between.marks,
      ...drawn.marks,
    ],
    boxes: [...between.boxes, ...drawn.boxes],
    reach: drawn.reach,
    shift: spreadOut?.shift ?? 0,
    dropped: { stops: spreadOut?.dropped ?? [], between: between.dropped },
  }
}

function drawRun(
  { origin, stops, shift }: SpreadRun,
  edge: Edge,
  lineAt: number,
): Omit<LaidBeside, 'dropped' | 'shift'> {
  const bend = shift < straight ? 0 : Math.min(Math.max(shift * steepness, beyondLine), highestBend)
  const start = lineAt + beyondLine
  const end = start + bend
  const put = stops.map(({ text, place }) => text.put(place, end + beforeText))
  const bent = stops.flatMap(({ stop, place }): [Point, Point][] =>
    bend === 0 ? [] : [[pointBeside(edge, stop.at, start), pointBeside(edge, place, end)]],
  )
  const [first, last] = [stops[0]!.stop.at, stops.at(-1)!.stop.at]
  const lines: [Point, Point][] =
    first < last ? [[pointBeside(edge, first, lineAt), pointBeside(edge, last, lineAt)]] : []
  const heads: { tip: Point; way: Point }[] = []
  const dots: Point[] = []
  stops.forEach(({ stop }, i) => {
    if (stop.at === origin) return
    const way = stop.at > origin ? 1 : -1
    const before = stops[i - way]?.stop.at ?? origin
    const tip = pointBeside(edge, stop.at, lineAt)
    if (Math.abs(stop.at - before) < arrowHead.length + roomForHead) dots.push(tip)
    else heads.push({ tip, way: wayAlong(edge, way) })
  })
  return {
    marks: [
      ...(lines.length + bent.length > 0 ? [linesMark(dimensionLines, 'thin', [...lines, ...bent])] : []),
      originMark(pointBeside(edge, origin, lineAt)),
      ...arrowHeads(heads),
      ...dimensionDots(dots),
      ...put.map(({ mark }) => mark),
    ],
    boxes: put.map(({ box }) => box),
    reach: end + beforeText + Math.max(...stops.map(({ text }) => text.across)),
  }
}

/** Lettering that stands aside by less than this hangs on a straight line. */
const straight = 0.4
/** What is seen of a dimension line behind an arrowhead. */
const roomForHead = 1.2
