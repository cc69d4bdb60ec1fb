import { contourSeparation, regionSeparation } from '../../geometry/measure/separation.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import { type Cut, isHole } from '../subject/cut.ts'

/** How much wood is between two cuts, in millimetres: 0 where they touch; negative for holes that overlap. */
export function woodBetween(a: Cut, b: Cut): number {
  if (isHole(a) && isHole(b)) {
    return Math.hypot(a.centre.x - b.centre.x, a.centre.y - b.centre.y) - a.radius - b.radius
  }
  return regionSeparation(a.region, b.region).distance
}

/** How much wood is between a cut and the nearest edge of the wood that it lies in. */
export function woodToEdge({ region }: Cut, wood: readonly Region[]): number {
  const contours = wood.flatMap(({ outer, holes }) => [outer, ...holes])
  return Math.min(...contours.map(contour => contourSeparation(region.outer, contour).distance))
}
