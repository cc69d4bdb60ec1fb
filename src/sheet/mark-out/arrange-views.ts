import type { FaceName } from '../../finding/face-name.ts'
import { joinBounds, noBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Model } from '../../model/part.ts'
import type { DrawnView } from './draw-view.ts'

/** White between one view with its dimensions and the next. */
const gap = 7

/**
 * How far each view is moved from where it was drawn. In third angle a view stands on the side that it is seen from, in
 * first angle on the other one; views beside each other stay in line with the front, which stays where it is. Edges of an
 * outline are seen each by itself, below. ISO 5456-2, from memory.
 */
export function arrangeViews(
  views: readonly DrawnView[],
  projection: Model['projection'],
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
    all = joinBounds(all, moved(drawn.bounds, move))
  }
  put('front', () => ({ x: 0, y: 0 }))
  const front = all
  put(above, ({ bottom }) => ({ x: 0, y: front.top + gap - bottom }))
  put(below, ({ top }) => ({ x: 0, y: front.bottom - gap - top }))
  const column = all
  put(before, ({ right }) => ({ x: column.left - gap - right, y: 0 }))
  put(behind, ({ left }) => ({ x: column.right + gap - left, y: 0 }))
  const row = all
  put('back', ({ left }) => ({ x: row.right + gap - left, y: 0 }))
  for (const { view, bounds } of views) {
    if (moves.has(view.face)) continue
    const move = { x: all.left - bounds.left, y: all.bottom - gap - bounds.top }
    moves.set(view.face, move)
    all = joinBounds(all, moved(bounds, move))
  }
  return moves
}

function moved({ left, right, bottom, top }: Bounds, { x, y }: Point): Bounds {
  return { left: left + x, right: right + x, bottom: bottom + y, top: top + y }
}
