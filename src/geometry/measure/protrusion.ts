import { coincident } from '../../number/tolerance.ts'
import type { Contour, Region } from '../shape/contour.ts'
import { between, type Point } from '../shape/point.ts'
import type { Arc, Segment } from '../shape/segment.ts'
import { spans } from '../shape/span.ts'
import { leftOf, tangentAt } from './along.ts'
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
 * How far a shape sticks out of a region at the most, by its corners and its arcs. Exact where the region is convex,
 * since the distance to a convex set is greatest at an extreme point.
 */
export function protrusion(shape: Region, region: Region): Protrusion | undefined {
  let worst: Protrusion | undefined
  for (const s of shape.outer.segments) {
    const points = s.kind === 'arc' ? [s.from, ...extremesOf(s, region)] : [s.from]
    for (const p of points) {
      const found = discProtrusion(p, 0, region)
      if (found !== undefined && (worst === undefined || found.by > worst.by)) worst = found
    }
  }
  return worst
}

/**
 * The points of an arc, besides its ends, that may be farthest from a region: those that lie straight out from one of its
 * edges or corners.
 */
function extremesOf(a: Arc, region: Region): readonly Point[] {
  const { centre, radius } = a
  // most arcs are parts of a disc that is all inside
  if (discProtrusion(centre, radius, region) === undefined) return []
  const directions = [region.outer, ...region.holes].flatMap(({ segments }) =>
    segments.flatMap(edge => [
      edge.kind === 'line' ? leftOf(tangentAt(edge, 0)) : between(edge.centre, centre),
      between(edge.from, centre),
    ]),
  )
  return directions.flatMap(({ x, y }) => {
    const length = Math.hypot(x, y)
    if (!(length > coincident)) return []
    return [radius, -radius].flatMap(by => {
      const p = { x: centre.x + (by * x) / length, y: centre.y + (by * y) / length }
      return spans(a, p) ? [p] : []
    })
  })
}
