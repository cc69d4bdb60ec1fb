import { clipPaths } from '../../geometry/cut/clip-path.ts'
import { regionBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds, Contour, Region } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { polyline } from '../../geometry/shape/polygon.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import { grown } from '../label/clear-space.ts'
import { clearance } from '../label/find-place.ts'
import { boxesOverlap, type Stretch } from '../label/touch.ts'

/** From one line of the hatching to the next, square to them: far enough apart to write between. */
const pitch = 2
/** What is left of a line beside something spared has to be longer than this to be seen as one. */
const shortest = 0.6

/** Lines at 45° that climb to the right, or fall, within the regions and clear of the boxes. */
export function hatch(
  regions: readonly Region[],
  spared: readonly Bounds[],
  direction: 'rising' | 'falling' = 'rising',
): readonly Stretch[] {
  const boxes = spared.map(box => grown(box, clearance))
  return regions
    .flatMap(region => {
      const bounds = regionBounds(region)
      const inside = clipPaths(linesAcross(bounds, direction), [region]).flatMap(pieces => pieces.inside)
      const near = boxes.filter(box => boxesOverlap(box, bounds)).map(rectangle)
      return near.length === 0 ? inside : clipPaths(inside, near).flatMap(pieces => pieces.outside)
    })
    .flatMap(({ segments }) => segments.map(({ from, to }): Stretch => [from, to]))
    .filter(([a, b]) => Math.hypot(b.x - a.x, b.y - a.y) > shortest)
}

/** A rising line holds the points with x − y = c, a falling one x + y = c; c is a multiple of one step, so that neighbours line up. */
function linesAcross({ left, right, bottom, top }: Bounds, direction: 'rising' | 'falling'): Contour[] {
  const step = pitch * Math.SQRT2
  const slope = direction === 'rising' ? 1 : -1
  const [low, high] = direction === 'rising' ? [left - top, right - bottom] : [left + bottom, right + top]
  const lines: Contour[] = []
  for (let n = Math.ceil(low / step); n <= high / step; n++) {
    const at = (x: number): Point => ({ x, y: slope * (x - n * step) })
    lines.push(polyline([at(left - 1), at(right + 1)]))
  }
  return lines
}
