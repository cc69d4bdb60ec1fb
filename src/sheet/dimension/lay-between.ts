import { linesMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Fonts } from '../../text/fonts.ts'
import { arrowHeads, dimensionLines } from './arrow.ts'
import { type DimensionText, dimensionText } from './dimension-text.ts'
import { type Edge, isLevel, pointBeside } from './edge.ts'
import type { Between } from './run.ts'

export type LaidBetween = {
  readonly marks: readonly Mark[]
  readonly boxes: readonly Bounds[]
  /** How far out it all reaches. */
  readonly reach: number
  /** How far out an extension line at a place has to go for what stands here. */
  readonly lines: readonly { readonly at: number; readonly to: number }[]
  /** What found no room for its lettering. */
  readonly dropped: readonly Between[]
}

/** White between lettering and the lines on both sides of it. */
const white = 0.9
/** From the dimension line to its lettering, and from there to what comes after. */
const above = 0.7
const after = 1.2
/** How far an extension line goes past the dimension line. */
const past = 1

/**
 * Distances between pairs of places, each with its line between two extension lines, in as few lanes as they need.
 * Lettering stands where no extension line passes: those of `passing` go through all lanes.
 */
export function layBetween(
  pairs: readonly Between[],
  passing: readonly number[],
  edge: Edge,
  inner: number,
  fonts: Fonts,
): LaidBetween {
  const ends = pairs.flatMap(({ from, to }) => [from, to])
  const fixed = [...new Set([...passing, ...ends])].sort((a, b) => a - b)
  const dropped: Between[] = []
  const found = [...pairs]
    .sort((a, b) => a.from - b.from || a.to - b.to)
    .flatMap(pair => {
      const place = placeFor(pair, fixed, edge, fonts)
      if (place === undefined) dropped.push(pair)
      return place === undefined ? [] : [{ pair, ...place }]
    })
  const marks: Mark[] = []
  const boxes: Bounds[] = []
  const lines: { at: number; to: number }[] = []
  let reach = inner
  for (const lane of lanesOf(found)) {
    const at = reach
    const put = lane.map(({ text, along }) => text.put(along, at + above))
    marks.push(...put.map(({ mark }) => mark))
    boxes.push(...put.map(({ box }) => box))
    const ends = lane.map(({ pair }) => pair)
    marks.push(
      linesMark(
        dimensionLines,
        'thin',
        ends.map(({ from, to }): [Point, Point] => [pointBeside(edge, from, at), pointBeside(edge, to, at)]),
      ),
      ...arrowHeads(
        ends.flatMap(({ from, to }) => [
          { tip: pointBeside(edge, from, at), way: wayAlong(edge, -1) },
          { tip: pointBeside(edge, to, at), way: wayAlong(edge, 1) },
        ]),
      ),
    )
    lines.push(...ends.flatMap(({ from, to }) => [from, to].map(end => ({ at: end, to: at + past }))))
    reach = at + above + Math.max(...lane.map(({ text }) => text.across)) + after
  }
  return { marks, boxes, reach, lines, dropped }
}

export function wayAlong(edge: Edge, sign: 1 | -1): Point {
  return isLevel(edge) ? { x: sign, y: 0 } : { x: 0, y: sign }
}

type Found = { readonly pair: Between; readonly text: DimensionText; readonly along: number }

/** The widest way to write it that goes between two lines, as near to the middle as it can stand. */
function placeFor(
  { from, to, words }: Between,
  fixed: readonly number[],
  edge: Edge,
  fonts: Fonts,
): Omit<Found, 'pair'> | undefined {
  const middle = (from + to) / 2
  const within = fixed.filter(at => at >= from && at <= to)
  for (const upward of isLevel(edge) ? [false, true] : [false]) {
    const text = dimensionText(words, edge, upward, fonts)
    const room = text.along / 2 + white
    const places = within.slice(1).flatMap((right, i) => {
      const left = within[i]!
      if (right - left < 2 * room) return []
      return [Math.min(Math.max(middle, left + room), right - room)]
    })
    const [along] = places.sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle) || a - b)
    if (along !== undefined) return { text, along }
  }
  return undefined
}

/** Each in the first lane whose last one ends before it begins. They come in the order in which they begin. */
function lanesOf(found: readonly Found[]): readonly (readonly Found[])[] {
  const lanes: Found[][] = []
  for (const one of found) {
    const free = lanes.find(lane => lane.at(-1)!.pair.to <= one.pair.from)
    if (free === undefined) lanes.push([one])
    else free.push(one)
  }
  return lanes
}
