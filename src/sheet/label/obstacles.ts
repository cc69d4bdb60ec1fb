import { chordContour } from '../../geometry/approximate/chords.ts'
import type { Bounds, Contour } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'

/** A straight piece of a line that text keeps clear of. */
export type Stretch = readonly [Point, Point]

type Cell = { readonly stretches: Stretch[]; readonly boxes: Bounds[] }

/** What text has to keep clear of: lines, as chords, and boxes of text that stand already. */
export type Obstacles = {
  readonly addContours: (contours: readonly Contour[]) => void
  readonly addBox: (box: Bounds) => void
  /** All that may touch a box, some of it more than once; what lies far from it is not among it. */
  readonly near: (box: Bounds) => readonly Readonly<Cell>[]
}

/** Much less than the white that is kept, so that chords for arcs let no text touch one. */
const chordDeviation = 0.02

/**
 * The plane is divided into square cells, so that a part with two thousand holes does not ask about all of them for
 * every letter. About twice as large as a letter: smaller, and a word stands in too many; larger, and each holds too
 * much.
 */
const cellSize = 10

export function emptyObstacles(): Obstacles {
  const cells = new Map<number, Cell>()
  const add = (box: Bounds, enter: (cell: Cell) => void): void => {
    for (const key of keysOf(box)) {
      let cell = cells.get(key)
      if (cell === undefined) {
        cell = { stretches: [], boxes: [] }
        cells.set(key, cell)
      }
      enter(cell)
    }
  }
  return {
    addContours: contours => {
      for (const stretch of contours.flatMap(stretchesOf))
        add(boundsOf(stretch), cell => cell.stretches.push(stretch))
    },
    addBox: box => add(box, cell => cell.boxes.push(box)),
    near: box => {
      const found: Cell[] = []
      for (const key of keysOf(box)) {
        const cell = cells.get(key)
        if (cell !== undefined) found.push(cell)
      }
      return found
    },
  }
}

export function boundsOf([a, b]: Stretch): Bounds {
  return {
    left: Math.min(a.x, b.x),
    right: Math.max(a.x, b.x),
    bottom: Math.min(a.y, b.y),
    top: Math.max(a.y, b.y),
  }
}

/** One number for each cell that a box reaches into; columns are further apart than any part is high. */
function keysOf({ left, right, bottom, top }: Bounds): readonly number[] {
  const number = (at: number): number => Math.floor(at / cellSize)
  const keys: number[] = []
  for (let i = number(left); i <= number(right); i++) {
    for (let j = number(bottom); j <= number(top); j++) keys.push(i * cellsInColumn + j)
  }
  return keys
}

/** Two cells that far apart may share a number, which costs time and nothing else: what is near is looked at closely. */
const cellsInColumn = 1e6

/** Chords no longer than a cell, so that a long slanting line does not stand in every cell of its rectangle. */
function stretchesOf(contour: Contour): readonly Stretch[] {
  return chordContour(contour, chordDeviation).segments.flatMap(({ from, to }) => {
    const count = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / cellSize))
    const at = (i: number): Point => ({
      x: from.x + ((to.x - from.x) * i) / count,
      y: from.y + ((to.y - from.y) * i) / count,
    })
    return Array.from({ length: count }, (_, i): Stretch => [at(i), at(i + 1)])
  })
}
