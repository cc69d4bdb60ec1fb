import type { Side } from '../../finding/side.ts'
import { tangentAt } from '../../geometry/measure/along.ts'
import { segmentBounds } from '../../geometry/measure/bounds.ts'
import type { Contour, Region } from '../../geometry/shape/contour.ts'
import type { Point, Vector } from '../../geometry/shape/point.ts'
import type { Segment } from '../../geometry/shape/segment.ts'
import { coincident } from '../../number/tolerance.ts'

/** A corner of a contour: where two of its edges meet and do not run smoothly into each other. */
export type OutlineCorner = { readonly at: Point; readonly before: Segment; readonly after: Segment }

/** Directions that differ by less than this, in radians, are one; a corner as flat as that nobody sees or cuts. */
const smooth = 1e-4

export function cornersOf({ segments }: Contour): readonly OutlineCorner[] {
  return segments.flatMap((after, i) => {
    const before = segments.at(i - 1)!
    return isSharp(tangentAt(before, 1), tangentAt(after, 0)) ? [{ at: after.from, before, after }] : []
  })
}

/** Whether a line that comes in one direction and goes on in another has a corner there. */
export function isSharp(u: Vector, v: Vector): boolean {
  return Math.abs(Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y)) >= smooth
}

/**
 * The edges that run through the thickness, seen from a side: where along the view each stands, and whether wood that
 * is nearer hides it. Those at the ends of the view are its own outline.
 */
export function edgesSeenFrom(
  side: Exclude<Side, 'front' | 'back'>,
  outline: readonly Region[],
): readonly { readonly at: number; readonly hidden: boolean }[] {
  const contours = outline.flatMap(({ outer, holes }) => [outer, ...holes])
  const segments = contours.flatMap(contour => contour.segments).map(segment => segmentBounds(segment))
  const level = side === 'top' || side === 'bottom'
  const nearer = side === 'top' || side === 'right' ? 1 : -1
  const found = new Map<number, boolean>()
  for (const { at } of contours.flatMap(cornersOf)) {
    const [along, near] = level ? [at.x, at.y * nearer] : [at.y, at.x * nearer]
    const hidden = segments.some(({ left, right, bottom, top }) => {
      const [from, to] = level ? [left, right] : [bottom, top]
      const nearest = level ? (nearer === 1 ? top : -bottom) : nearer === 1 ? right : -left
      return from < along - coincident && to > along + coincident && nearest > near + coincident
    })
    found.set(along, (found.get(along) ?? true) && hidden)
  }
  return [...found].map(([at, hidden]) => ({ at, hidden }))
}
