import { lettering } from '../../drawing/lettering.ts'
import { linesMark, textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Fonts } from '../../text/fonts.ts'
import { measureLine } from '../../text/lay-out.ts'
import type { Words } from '../../text/words.ts'
import { type Stretch, spread } from '../dimension/spread.ts'

/** A hole, and what stands over it: its distance, and a letter where the strip has several. */
export type Running = {
  readonly centre: Point
  /** How far its cross reaches. */
  readonly reach: number
  readonly distance: Words
  readonly letter: string | undefined
  readonly subject: string
}

export type RunningLabels = {
  readonly marks: readonly Mark[]
  /** Of each hole that has its label, the rectangle of label and hole. */
  readonly boxes: readonly Bounds[]
  readonly top: number
  /** Where there is no room for all, every so many-th hole has its label. */
  readonly every: number
}

/** A line of a label: upright text is laid on its side. */
type Cell = {
  readonly width: number
  readonly height: number
  readonly draw: (middle: number, bottom: number) => readonly Mark[]
}

const between = 1.4
/** A level label may stand as far from its hole as this; farther off its line lies too flat. */
const farthestLevel = 5
const farthestUpright = 14
/** Between a letter and the distance under it. */
const underLetter = 0.5
/** From the lowest point of a label to where its leader ends, and from there to the hole. */
const leaderGap = 0.5
const shortestLeader = 1.2

/**
 * The running distances over a row of holes, from a line at `bottom` up: level where there is room, else upright, moved
 * aside with a line to the hole where that is not enough, and at last only over every second, third … hole. They stand
 * within a stretch as far as there is room.
 */
export function runningLabels(
  holes: readonly Running[],
  bottom: number,
  within: Stretch,
  fonts: Fonts,
): RunningLabels {
  const sorted = holes.toSorted((a, b) => a.centre.x - b.centre.x)
  const level = sorted.map(hole => levelCell(hole, fonts))
  const levelAt = middlesOf(sorted, level, within)
  if (farthest(sorted, levelAt) <= farthestLevel) return put(sorted, level, levelAt, bottom, 1)
  for (let every = 1; ; every++) {
    const shown = sorted.filter((_, i) => i % every === 0 || i === sorted.length - 1)
    const upright = shown.map(hole => uprightCell(hole, fonts))
    const at = middlesOf(shown, upright, within)
    if (shown.length <= 2 || farthest(shown, at) <= farthestUpright)
      return put(shown, upright, at, bottom, every)
  }
}

function middlesOf(holes: readonly Running[], cells: readonly Cell[], within: Stretch): readonly number[] {
  return spread(
    holes.map(({ centre }) => centre.x),
    cells.map(({ width }) => width + between),
    within,
  )
}

function farthest(holes: readonly Running[], at: readonly number[]): number {
  return Math.max(...holes.map(({ centre }, i) => Math.abs(centre.x - at[i]!)))
}

function put(
  holes: readonly Running[],
  cells: readonly Cell[],
  at: readonly number[],
  bottom: number,
  every: number,
): RunningLabels {
  // slanting leaders need room to be told apart
  const moved = farthest(holes, at)
  const foot = bottom + shortestLeader + Math.min(moved / 2, 5)
  const marks: Mark[] = []
  const boxes = holes.map(({ centre, reach, subject }, i): Bounds => {
    const cell = cells[i]!
    const middle = at[i]!
    marks.push(...cell.draw(middle, foot))
    const start = { x: centre.x, y: centre.y + reach + leaderGap }
    const bend = { x: centre.x, y: bottom }
    const end = { x: middle, y: foot - leaderGap }
    const leader = bend.y > start.y ? ([start, bend, end] as const) : ([start, end] as const)
    marks.push(
      linesMark(
        { layer: 'dimension', subject },
        'thin',
        leader.slice(1).map((to, k) => [leader[k]!, to] as const),
      ),
    )
    return {
      left: Math.min(centre.x - reach, middle - cell.width / 2),
      right: Math.max(centre.x + reach, middle + cell.width / 2),
      bottom: centre.y - reach,
      top: foot + cell.height,
    }
  })
  return { marks, boxes, top: Math.max(...boxes.map(box => box.top)), every }
}

function levelCell({ distance, letter, subject }: Running, fonts: Fonts): Cell {
  const laid = measureLine(fonts.regular, distance, lettering.large)
  const height = laid.ascent + laid.descent + (letter === undefined ? 0 : underLetter)
  const belongs = { layer: 'dimension', subject } as const
  const above = letter === undefined ? undefined : measureLine(fonts.bold, [letter], lettering.large)
  return {
    width: Math.max(laid.width, above?.width ?? 0),
    height: height + (above === undefined ? 0 : above.ascent + above.descent),
    draw: (x, y) => [
      textMark(belongs, distance, { x, y: y + laid.descent }, lettering.large, { align: 'middle' }),
      ...(letter === undefined || above === undefined
        ? []
        : [
            textMark(belongs, [letter], { x, y: y + height + above.descent }, lettering.large, {
              align: 'middle',
              weight: 'bold',
            }),
          ]),
    ],
  }
}

/** Read from the bottom up, the letter last. */
function uprightCell({ distance, letter, subject }: Running, fonts: Fonts): Cell {
  const laid = measureLine(fonts.regular, distance, lettering.large)
  const above = letter === undefined ? undefined : measureLine(fonts.bold, [letter], lettering.large)
  const belongs = { layer: 'dimension', subject } as const
  const angle = Math.PI / 2
  const thick = laid.ascent + laid.descent
  return {
    width: Math.max(thick, above === undefined ? 0 : above.ascent + above.descent),
    height: laid.width + (above === undefined ? 0 : above.width + 1),
    draw: (x, y) => [
      textMark(belongs, distance, { x: x + (laid.ascent - laid.descent) / 2, y }, lettering.large, { angle }),
      ...(letter === undefined || above === undefined
        ? []
        : [
            textMark(
              belongs,
              [letter],
              { x: x + (above.ascent - above.descent) / 2, y: y + laid.width + 1 },
              lettering.large,
              { angle, weight: 'bold' },
            ),
          ]),
    ],
  }
}
