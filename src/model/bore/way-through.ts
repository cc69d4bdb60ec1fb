import { type FaceName, isSide } from '../../finding/face-name.ts'
import { clipPaths } from '../../geometry/cut/clip-path.ts'
import { regionBounds } from '../../geometry/measure/bounds.ts'
import { pointInRegion } from '../../geometry/measure/inside.ts'
import { nearestOnRegion } from '../../geometry/measure/nearest.ts'
import { distance } from '../../geometry/shape/point.ts'
import { line } from '../../geometry/shape/segment.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Bore } from '../feature.ts'
import { faceOf, type Solid } from '../part.ts'
import type { Point3 } from '../pose.ts'
import { extentOf } from '../solid-extent.ts'
import { type Axis, axisOf, pointAlong } from './axis.ts'

/** A stretch of an axis that lies in the wood, in millimetres along it from where it begins. */
export type Stretch = { readonly from: number; readonly to: number }

/** Where a bore's axis leaves the wood for the last time. */
export type WayOut = {
  /** None where it is an edge of the outline that has no name, a curve for instance. */
  readonly face?: FaceName
  readonly point: Point3
  /** Along the axis, in millimetres from the face that the bore enters by. */
  readonly distance: number
}

/**
 * The stretches of wood that an axis goes through, in its order, in the part before anything is cut out of it. What
 * runs within `coincident` along the part's edge is not in the wood.
 */
export function woodAlong(solid: Solid, axis: Axis): readonly Stretch[] {
  const slab = withinThickness(axis, extentOf(solid).thickness, reachOf(solid, axis))
  if (slab === undefined) return []
  const [first, last] = [pointAlong(axis, slab.from), pointAlong(axis, slab.to)]
  const aside = distance(first, last)
  if (aside <= coincident) return pointInRegion(solid.outline, first) === 'inside' ? [slab] : []
  const path = { segments: [line({ x: first.x, y: first.y }, { x: last.x, y: last.y })], closed: false }
  const [clipped] = clipPaths([path], [solid.outline])
  const at = (p: { readonly x: number; readonly y: number }): number =>
    slab.from + ((slab.to - slab.from) * distance(first, p)) / aside
  return (clipped?.inside ?? []).map(({ segments }) => ({
    from: at(segments[0]!.from),
    to: at(segments.at(-1)!.to),
  }))
}

/** Where a bore that goes through comes out of the wood; nothing where its axis misses the wood. */
export function wayOut(
  solid: Solid,
  { face, shape }: { readonly face: FaceName; readonly shape: Bore },
): WayOut | undefined {
  const axis = axisOf(shape, faceOf(solid, face).pose)
  const last = woodAlong(solid, axis).at(-1)
  if (last === undefined) return undefined
  const point = pointAlong(axis, last.to)
  const out = faceAt(solid, axis, point)
  return { ...(out === undefined ? {} : { face: out }), point, distance: last.to }
}

/** The face that an axis leaves the wood by at a point of it. */
function faceAt(solid: Solid, { into }: Axis, { x, y, z }: Point3): FaceName | undefined {
  if (into.z < 0 && z <= coincident) return 'back'
  if (into.z > 0 && z >= extentOf(solid).thickness - coincident) return 'front'
  const nearest = nearestOnRegion(solid.outline, { x, y })
  if (nearest === undefined) return undefined
  const contour = [solid.outline.outer, ...solid.outline.holes][nearest.contour]
  const tag = contour?.segments[nearest.segment]?.tag
  if (tag === undefined) return undefined
  const named = solid.edges.find(({ id }) => id === `edge:${tag}`)
  return named?.id ?? (isSide(tag) ? tag : undefined)
}

/** Farther than any point of the part is from where an axis begins. */
function reachOf({ outline, faces }: Solid, { from }: Axis): number {
  const { left, right, bottom, top } = regionBounds(outline)
  const aside = Math.max(Math.abs(from.x - left), Math.abs(right - from.x))
  const upright = Math.max(Math.abs(from.y - bottom), Math.abs(top - from.y))
  return 2 * (aside + upright + faces.front.pose.origin.z)
}

/** How far along the axis it is between the planes of back and front, up to `reach`. */
function withinThickness({ from, into }: Axis, thickness: number, reach: number): Stretch | undefined {
  if (into.z === 0) return from.z >= 0 && from.z <= thickness ? { from: 0, to: reach } : undefined
  const planes = [(0 - from.z) / into.z, (thickness - from.z) / into.z]
  const stretch = { from: Math.max(0, Math.min(...planes)), to: Math.min(reach, Math.max(...planes)) }
  return stretch.to - stretch.from > coincident ? stretch : undefined
}
