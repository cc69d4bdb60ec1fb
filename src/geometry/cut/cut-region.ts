import { difference, intersection } from '../boolean/boolean.ts'
import { createMemory } from '../boolean/memory.ts'
import { boundsOfRegions } from '../measure/bounds.ts'
import type { Bounds, Region } from '../shape/contour.ts'
import { type Outcome, success } from '../shape/outcome.ts'
import type { Point } from '../shape/point.ts'
import { polygon } from '../shape/polygon.ts'

/** What of the regions lies in an upright rectangle. Edges along the cut have no tag. */
export function cutByRectangle(regions: readonly Region[], bounds: Bounds): Outcome<readonly Region[]> {
  const { left, bottom, right, top } = bounds
  if (!(right > left && top > bottom)) return success([])
  const corners = [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ]
  return intersection(regions, [{ outer: polygon(corners), holes: [] }])
}

/**
 * The regions cut in two by the endless line through two points: what lies left of the way from `from` to `to`,
 * and what lies right of it. Edges along the cut have no tag.
 *
 * @throws RangeError when the two points are one: a fault of the caller
 */
export function cutByLine(
  regions: readonly Region[],
  from: Point,
  to: Point,
): Outcome<{ readonly left: readonly Region[]; readonly right: readonly Region[] }> {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  if (!(length > 0)) throw new RangeError('a line goes through two different points')
  if (regions.length === 0) return success({ left: [], right: [] })
  const half: Region = { outer: polygon(halfPlane(regions, from, to, length)), holes: [] }
  const memory = createMemory()
  const left = intersection(regions, [half], memory)
  if (!left.ok) return left
  const right = difference(regions, [half], memory)
  return right.ok ? success({ left: left.value, right: right.value }) : right
}

/** A rectangle whose first side lies on the line and which holds everything left of it that is in the regions. */
function halfPlane(regions: readonly Region[], from: Point, to: Point, length: number): Point[] {
  const { left, bottom, right, top } = boundsOfRegions(regions)
  const ux = (to.x - from.x) / length
  const uy = (to.y - from.y) / length
  const middle = { x: (left + right) / 2, y: (bottom + top) / 2 }
  const reach = right - left + (top - bottom)
  const along = (middle.x - from.x) * ux + (middle.y - from.y) * uy
  const aside = (middle.y - from.y) * ux - (middle.x - from.x) * uy
  const at = (s: number, t: number): Point => ({ x: from.x + s * ux - t * uy, y: from.y + s * uy + t * ux })
  // where all lies right of the line the rectangle is as good as any that holds nothing
  const depth = Math.max(reach, aside + reach)
  return [at(along - reach, 0), at(along + reach, 0), at(along + reach, depth), at(along - reach, depth)]
}
