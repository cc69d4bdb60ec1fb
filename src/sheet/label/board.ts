import type { Mark } from '../../drawing/mark.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { boxAbout, type Extent, firstClear, type Suits } from './find-place.ts'
import { addBox, addContours, emptyObstacles, type Obstacles } from './obstacles.ts'

/** A drawing in the making: marks that stand already, and where more can stand without touching them. */
export type Board = {
  readonly marks: readonly Mark[]
  readonly obstacles: Obstacles
  /** Boxes that are taken by lettering, for what must spare them. */
  readonly taken: readonly Bounds[]
  /** Adds marks whose lines are obstacles from now on. */
  readonly draw: (marks: readonly Mark[]) => void
  /** Adds marks whose box is an obstacle from now on. */
  readonly put: (marks: readonly Mark[], box: Bounds) => void
  /** Puts something at the first middle that suits and where it touches nothing, and says where; nothing where there is none. */
  readonly place: (
    middles: Iterable<Point>,
    extent: Extent,
    area: Bounds,
    marksAt: (middle: Point) => readonly Mark[],
    suits?: Suits,
  ) => Point | undefined
}

export function emptyBoard(): Board {
  const marks: Mark[] = []
  const taken: Bounds[] = []
  const obstacles = emptyObstacles()
  const put: Board['put'] = (added, box) => {
    marks.push(...added)
    taken.push(box)
    addBox(obstacles, box)
  }
  return {
    marks,
    obstacles,
    taken,
    draw: added => {
      marks.push(...added)
      for (const mark of added) {
        if (mark.kind === 'path') addContours(obstacles, mark.contours, mark.subject)
        if (mark.kind === 'fill')
          addContours(
            obstacles,
            mark.regions.map(r => r.outer),
            mark.subject,
          )
      }
    },
    put,
    place: (middles, extent, area, marksAt, suits) => {
      const middle = firstClear(middles, extent, area, obstacles, suits)
      if (middle !== undefined) put(marksAt(middle), boxAbout(middle, extent))
      return middle
    },
  }
}
