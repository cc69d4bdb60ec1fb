import { type Belongs, linesMark } from '../drawing/make-mark.ts'
import type { Mark } from '../drawing/mark.ts'
import type { Bounds } from '../geometry/shape/contour.ts'
import type { Point } from '../geometry/shape/point.ts'
import type { Board } from './label/board.ts'
import { choosePlaces } from './label/choose-places.ts'
import { boxAbout, type Extent } from './label/find-place.ts'
import { letterPlaces } from './template/letter-places.ts'

/** What is to stand beside a point: how large it is, and its marks about a middle. */
export type BesidePoint = {
  readonly at: Point
  readonly extent: Extent
  readonly marksAt: (middle: Point) => readonly Mark[]
}

/**
 * Puts each thing beside its point, all chosen together, with a leader where it stands off. Says of each whether it found
 * room.
 */
export function putBesidePoints(
  things: readonly BesidePoint[],
  leaders: Belongs,
  board: Board,
  area: Bounds,
): readonly boolean[] {
  const places = choosePlaces(
    things.map(({ at, extent }) =>
      letterPlaces(
        { kind: 'box', box: boxAbout(at, { width: 0, height: 0 }) },
        () => false,
        extent,
        area,
        board.obstacles,
      ),
    ),
  )
  places.forEach((place, i) => {
    if (place === undefined) return
    board.put(things[i]!.marksAt(place.middle), place.box)
    if (place.leader !== undefined) board.draw([linesMark(leaders, 'thin', [place.leader])])
  })
  return places.map(place => place !== undefined)
}
