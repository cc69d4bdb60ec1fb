import type { FaceName } from '../../finding/face-name.ts'
import { joinBounds, noBounds, shiftBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Model } from '../../model/part.ts'
import type { DrawnView } from './draw-view.ts'

/** White between one view with its dimensions and the next. */
const gap = 7

/** In a row and a column about the front, or with the ends and the back below, which is not so wide. */
export type Arrangement = 'about the front' | 'below the front'

/**
 * How far each view is moved from where it was drawn. In third angle a view stands on the side that it is seen from, in
 * first angle on the other one; views beside each other stay in line with the front, which stays where it is. Edges of an
 * outline are seen each by itself, below, as ends and back are where there is no room beside. ISO 5456-2, from memory.
 */
export function arrangeViews(
  views: readonly DrawnView[],
  projection: Model['projection'],
  arrangement: Arrangement,
): ReadonlyMap<FaceName, Point> {
  const of = (face: FaceName): DrawnView | undefined => views.find(({ view }) => view.face === face)
  const [above, below] = projection === 'third' ? (['top', 'bottom'] as const) : (['bottom', 'top'] as const)
  const [before, behind] =
    projection === 'third' ? (['left', 'right'] as const) : (['right', 'left'] as const)
  const moves = new Map<FaceName, Point>()
  let all = noBounds
  const put = (face: FaceName, moveTo: (bounds: Bounds) => Point): void => {
    const drawn = of(face)
    if (drawn === undefined) return
    const move = moveTo(drawn.bounds)
    moves.set(face, move)
    all = joinBounds(all, shiftBounds(drawn.bounds, move.x, move.y))
  }
  put('front', () => ({ x: 0, y: 0 }))
  const front = all
  put(above, ({ bottom }) => ({ x: 0, y: front.top + gap - bottom }))
  put(below, ({ top }) => ({ x: 0, y: front.bottom - gap - top }))
  const column = all
  if (arrangement === 'about the front') {
    put(before, ({ right }) => ({ x: column.left - gap - right, y: 0 }))
    put(behind, ({ left }) => ({ x: column.right + gap - left, y: 0 }))
    const row = all
    put('back', ({ left }) => ({ x: row.right + gap - left, y: 0 }))
  } else {
    let from = column.left
    for (const end of [before, behind]) {
      put(end, ({ left, top }) => ({ x: from - left, y: column.bottom - gap - top }))
      const drawn = of(end)
      if (drawn !== undefined) from += drawn.bounds.right - drawn.bounds.left + gap
    }
  }
  for (const { view, bounds } of views) {
    if (moves.has(view.face)) continue
    const move = { x: all.left - bounds.left, y: all.bottom - gap - bounds.top }
    moves.set(view.face, move)
    all = joinBounds(all, shiftBounds(bounds, move.x, move.y))
  }
  return moves
}
