import { coincident } from '../../number/tolerance.ts'
import type { Contour, Region } from '../shape/contour.ts'
import type { Point } from '../shape/point.ts'
import type { Segment } from '../shape/segment.ts'
import { tangentAt } from './along.ts'
import { pointInRegion } from './inside.ts'
import { type NearestOnContour, nearestOnRegion } from './nearest.ts'

/** How far something sticks out of a region, in millimetres, and the edge of the region that it passes. */
export type Protrusion = { readonly by: number; readonly beyond: string | undefined }

/**
 * How far a disc sticks out of a region at the most; `undefined` where it does not, which includes touching from
 * inside within `coincident`. Exact for a region without holes.
 */
export function discProtrusion(centre: Point, radius: number, region: Region): Protrusion | undefined {
  const nearest = nearestOnRegion(region, centre)
  if (nearest === undefined) return undefined
  const outward = pointInRegion(region, centre) === 'outside' ? nearest.distance : -nearest.distance
  const by = outward + radius
  if (by <= coincident) return undefined
  const contour = [region.outer, ...region.holes][nearest.contour]!
  return { by, beyond: edgePassed(contour, nearest, centre)?.tag }
}

/** Where the nearest point is a corner both its edges are as near; passed is the one whose own line is farther behind. */
function edgePassed(
  { segments }: Contour,
  { point, segment }: NearestOnContour,
  p: Point,
): Segment | undefined {
  const count = segments.length
  const meeting = [segment, (segment + 1) % count, (segment + count - 1) % count]
    .map(i => segments[i]!)
    .filter(({ from, to }, i) => i === 0 || from === point || to === point)
  const behind = (edge: Segment): number => {
    const along = tangentAt(edge, edge.from === point ? 0 : 1)
    return Math.abs(along.x * (p.y - point.y) - along.y * (p.x - point.x))
  }
  return meeting.reduce((best, edge) => (behind(edge) > behind(best) ? edge : best))
}

/**
 * How far a shape sticks out of a region at the most: by its corners, and by its arcs taken as whole discs where
 * they bulge outward. Exact where the region is convex, since the distance to a convex set is greatest at an
 * extreme point.
 */
export function protrusion(shape: Region, region: Region): Protrusion | undefined {
  let worst: Protrusion | undefined
  for (const s of shape.outer.segments) {
    const found =
      s.kind === 'arc' ? discProtrusion(s.centre, s.radius, region) : discProtrusion(s.from, 0, region)
    if (found !== undefined && (worst === undefined || found.by > worst.by)) worst = found
  }
  return worst
}
