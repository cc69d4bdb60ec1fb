import type { Mark } from '../../drawing/mark.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { asLines, type Obstacles } from './clear-space.ts'
import { boxAbout, type Extent, firstClear } from './find-place.ts'

/** A drawing in the making: marks that stand already, and where more can stand without touching them. */
export type Board = {
  readonly marks: readonly Mark[]
  readonly obstacles: Obstacles
  /** Boxes that are taken by lettering, for what must spare them. */
  readonly taken: readonly Bounds[]
  /** Adds marks whose lines are obstacles from now on. */
  readonly draw: (marks: readonly Mark[]) => void
  /** Adds marks that lie in a box, which is taken from now on. */
  readonly occupy: (box: Bounds, marks: readonly Mark[]) => void
  /** Puts something at the first middle where it touches nothing, and says where; nothing where there is none. */
  readonly place: (
    middles: Iterable<Point>,
    extent: Extent,
    area: Bounds,
    marksAt: (middle: Point) => readonly Mark[],
  ) => Point | undefined
}

export function emptyBoard(): Board {
  const marks: Mark[] = []
  const lines: (readonly Point[])[] = []
  const taken: Bounds[] = []
  const obstacles = { lines, boxes: taken }
  const occupy = (box: Bounds, added: readonly Mark[]): void => {
    marks.push(...added)
    taken.push(box)
  }
  return {
    marks,
    obstacles,
    taken,
    occupy,
    draw: added => {
      marks.push(...added)
      for (const mark of added) {
        if (mark.kind === 'path') lines.push(...asLines(mark.contours))
        if (mark.kind === 'fill') lines.push(...asLines(mark.regions.map(r => r.outer)))
      }
    },
    place: (middles, extent, area, marksAt) => {
      const middle = firstClear(middles, extent, area, obstacles)
      if (middle !== undefined) occupy(boxAbout(middle, extent), marksAt(middle))
      return middle
    },
  }
}
