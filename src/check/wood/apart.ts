import { middleOfBounds } from '../../geometry/measure/bounds.ts'
import { nearestOnRegion } from '../../geometry/measure/nearest.ts'
import { contourSeparation, regionSeparation } from '../../geometry/measure/separation.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import { distance } from '../../geometry/shape/point.ts'
import { type Cut, layersOf, shareDepth } from '../subject/cut.ts'

/**
 * How much wood is between two cuts, in millimetres, at whatever depth both have a part: 0 where they touch; negative for
 * discs that overlap. The mouth of a hole on the back is not on the front.
 */
export function woodBetween(a: Cut, b: Cut): number {
  return Math.min(Infinity, ...layersBetween(a, b).map(({ apart }) => apart))
}

/** How much wood is between two parts of cuts that are at one depth somewhere. */
type LayersApart = { readonly pair: readonly [Cut, Cut]; readonly apart: number }

/** Every two parts of two cuts that are at one depth somewhere. */
export function layersBetween(a: Cut, b: Cut): readonly LayersApart[] {
  return layersOf(a).flatMap(first =>
    layersOf(b)
      .filter(second => shareDepth(first, second))
      .map(second => ({ pair: [first, second] as const, apart: layersApart(first, second) })),
  )
}

function layersApart(a: Cut, b: Cut): number {
  if (a.disc && b.disc) return distance(a.disc.centre, b.disc.centre) - a.disc.radius - b.disc.radius
  return regionSeparation(a.region, b.region).distance
}

/**
 * How much wood is between a cut and the nearest edge of the wood that it lies in: exact where it is less than `upTo`
 * (mm). A cut that lies farther inside is told so by the circle round its box.
 */
export function woodToEdge({ region, bounds }: Cut, wood: readonly Region[], upTo: number): number {
  const middle = middleOfBounds(bounds)
  const around = distance(middle, { x: bounds.right, y: bounds.top })
  const atLeast = Math.min(...wood.map(one => (nearestOnRegion(one, middle)?.distance ?? 0) - around))
  if (atLeast >= upTo) return atLeast
  const contours = wood.flatMap(({ outer, holes }) => [outer, ...holes])
  return Math.min(...contours.map(contour => contourSeparation(region.outer, contour).distance))
}
