import { chordContour } from '../../geometry/approximate/chords.ts'
import type { Bounds, Contour } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'

/** A straight piece of a line that text keeps clear of. */
export type Stretch = readonly [Point, Point]

type Strip = { readonly stretches: Stretch[]; readonly boxes: Bounds[] }

/** What text has to keep clear of: lines, as chords, and boxes of text that stand already. */
export type Obstacles = {
  readonly addContours: (contours: readonly Contour[]) => void
  readonly addBox: (box: Bounds) => void
  /** What may touch a box, some of it more than once; what lies far to its left or right is not among it. */
  readonly near: (box: Bounds) => Iterable<Readonly<Strip>>
}

/** Much less than the white that is kept, so that chords for arcs let no text touch one. */
const chordDeviation = 0.02

/**
 * The plane is divided into upright strips, so that a part with two thousand holes does not ask about all of them
 * for every letter. About twice as wide as a letter: narrower, and long lines stand in too many; wider, and each
 * holds too much.
 */
const stripWidth = 10

export function emptyObstacles(): Obstacles {
  const strips = new Map<number, Strip>()
  const numberOf = (x: number): number => Math.floor(x / stripWidth)
  const enter = (left: number, right: number, add: (strip: Strip) => void): void => {
    for (let n = numberOf(left); n <= numberOf(right); n++) {
      let strip = strips.get(n)
      if (strip === undefined) {
        strip = { stretches: [], boxes: [] }
        strips.set(n, strip)
      }
      add(strip)
    }
  }
  return {
    addContours: contours => {
      for (const [a, b] of contours.flatMap(stretchesOf))
        enter(Math.min(a.x, b.x), Math.max(a.x, b.x), strip => strip.stretches.push([a, b]))
    },
    addBox: box => enter(box.left, box.right, strip => strip.boxes.push(box)),
    near: function* (box) {
      for (let n = numberOf(box.left); n <= numberOf(box.right); n++) {
        const strip = strips.get(n)
        if (strip !== undefined) yield strip
      }
    },
  }
}

function stretchesOf(contour: Contour): readonly Stretch[] {
  return chordContour(contour, chordDeviation).segments.map(({ from, to }) => [from, to])
}
