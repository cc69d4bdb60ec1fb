import type { FaceName } from '../../finding/face-name.ts'
import { joinBounds, noBounds, shiftBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Model } from '../../model/part.ts'
import type { DrawnView } from './draw-view.ts'

/** White between one view with its dimensions and the next. */
const gap = 7

/**
 * In a row and a column about the front; or with the ends and the back below, which is not so wide; or freely, in rows
 * that are no wider than so many millimetres where they hold more than one view.
 */
export type Arrangement = 'about the front' | 'below the front' | { readonly rows: number }

/** Rows in which views stand freely: as wide as an upright page, a lying one, and an upright small one. */
export const freely = [{ rows: 165 }, { rows: 235 }, { rows: 112 }] as const satisfies readonly Arrangement[]

/** The ways in which views may share a drawing, the best first. */
export function arrangementsOf(faces: readonly FaceName[]): readonly Arrangement[] {
  const beside = faces.some(face => face === 'left' || face === 'right' || face === 'back')
  return [
    'about the front',
    ...(beside ? (['below the front'] as const) : []),
    ...(faces.length > 1 ? freely : []),
  ]
}

/**
 * The views for two drawings: what stands in line over and under the front with it, and the others; where there are no
 * others, half of them. There are two at least, and the front is the first.
 */
export function inTwo(faces: readonly FaceName[]): readonly [readonly FaceName[], readonly FaceName[]] {
  const near = faces.filter((face): boolean => face === 'front' || face === 'top' || face === 'bottom')
  const first = near.length < faces.length ? near : near.slice(0, Math.ceil(near.length / 2))
  return [first, faces.filter(face => !first.includes(face))]
}

/** Whether views stand where the projection has them, so that its symbol says which side each shows. */
export function isProjected(arrangement: Arrangement): boolean {
  return typeof arrangement === 'string'
}

/**
 * How far each view is moved from where it was drawn. In third angle a view stands on the side that it is seen from, in
 * first angle on the other one; views beside each other stay in line with the front, which stays where it is. Edges of an
 * outline are seen each by itself, below, as ends and back are where there is no room beside. Views that stand freely are
 * told by their names alone. ISO 5456-2, from memory.
 */
export function arrangeViews(
  views: readonly DrawnView[],
  projection: Model['projection'],
  arrangement: Arrangement,
): ReadonlyMap<FaceName, Point> {
  if (typeof arrangement === 'object') return inRows(views, arrangement.rows)
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

/** One after the other from left to right, the lower sides of the faces in a row in line. */
function inRows(views: readonly DrawnView[], width: number): ReadonlyMap<FaceName, Point> {
  const rows: { readonly views: DrawnView[]; width: number }[] = []
  for (const drawn of views) {
    const wide = drawn.bounds.right - drawn.bounds.left
    const row = rows.at(-1)
    if (row === undefined || row.width + gap + wide > width) rows.push({ views: [drawn], width: wide })
    else {
      row.views.push(drawn)
      row.width += gap + wide
    }
  }
  const moves = new Map<FaceName, Point>()
  let top = 0
  for (const row of rows) {
    const y = top - Math.max(...row.views.map(({ bounds }) => bounds.top))
    let from = 0
    for (const { view, bounds } of row.views) {
      moves.set(view.face, { x: from - bounds.left, y })
      from += bounds.right - bounds.left + gap
    }
    top = y + Math.min(...row.views.map(({ bounds }) => bounds.bottom)) - gap
  }
  return moves
}
