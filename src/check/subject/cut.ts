import { regionBounds } from '../../geometry/measure/bounds.ts'
import { circle } from '../../geometry/shape/circle.ts'
import type { Bounds, Region } from '../../geometry/shape/contour.ts'
import { apply, identity, type Matrix } from '../../geometry/shape/matrix.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { transformRegion } from '../../geometry/shape/transform.ts'
import type { Bore, EngravedLines, EngravedText, Placed, Shape } from '../../model/feature.ts'

/** A feature that takes wood away; engraving takes no more than shows. */
export type Taking = Placed & { readonly shape: Exclude<Shape, EngravedLines | EngravedText> }

/** What a feature takes away, as seen on a plane. */
export type Cut = {
  readonly feature: Taking
  readonly region: Region
  readonly bounds: Bounds
  /** How deep in the wood it begins and ends, in millimetres from the face of the plane. */
  readonly from: number
  readonly to: number
}

/** A cut that is a hole, with its circle. */
export type HoleCut = Cut & { readonly bore: Bore; readonly centre: Point; readonly radius: number }

/** `onPlane` leads from the feature's face to the plane, which is so deep; `behind`: it enters from the far side. */
export function cutOf(
  feature: Taking,
  depth: number,
  onPlane: Matrix = identity,
  behind = false,
): Cut | HoleCut {
  const { shape } = feature
  const deep = depthOf(shape) ?? depth
  const span = behind ? { from: depth - deep, to: depth } : { from: 0, to: deep }
  if (shape.kind !== 'bore') {
    const region = transformRegion(shape.region, onPlane)
    return { feature, region, bounds: regionBounds(region), ...span }
  }
  const centre = apply(onPlane, shape.centre)
  const radius = shape.diameter.mm / 2
  const bounds = {
    left: centre.x - radius,
    right: centre.x + radius,
    bottom: centre.y - radius,
    top: centre.y + radius,
  }
  const region = { outer: circle(centre, radius), holes: [] }
  return { feature, region, bounds, ...span, bore: shape, centre, radius }
}

export function takesWood(feature: Placed): feature is Taking {
  const { kind } = feature.shape
  return kind !== 'engraved-lines' && kind !== 'engraved-text'
}

/** How deep a shape goes into the wood, where it does not go through. */
export function depthOf(shape: Taking['shape']): number | undefined {
  if (shape.kind === 'round-over') return shape.radius.mm
  return 'depth' in shape && shape.depth !== 'through' ? shape.depth.mm : undefined
}

export function isHole(cut: Cut): cut is HoleCut {
  return 'bore' in cut
}

/** Whether two cuts are at the same depth somewhere. */
export function shareDepth(a: Cut, b: Cut): boolean {
  return a.from < b.to && b.from < a.to
}
