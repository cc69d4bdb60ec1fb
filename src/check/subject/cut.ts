import { regionBounds } from '../../geometry/measure/bounds.ts'
import { circle } from '../../geometry/shape/circle.ts'
import type { Bounds, Region } from '../../geometry/shape/contour.ts'
import { apply, identity, type Matrix } from '../../geometry/shape/matrix.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { transformContour, transformRegion } from '../../geometry/shape/transform.ts'
import { mouthDepth } from '../../model/bore/mouth.ts'
import { mouthOval, type Oval, ovalContour, rimOval } from '../../model/bore/rim.ts'
import {
  type Bore,
  type EngravedLines,
  type EngravedText,
  isPlain,
  type Placed,
  type Shape,
} from '../../model/feature.ts'

/** A feature that takes wood away; engraving takes no more than shows. */
export type Taking = Placed & { readonly shape: Exclude<Shape, EngravedLines | EngravedText> }

/** What a feature takes away, as seen on a plane: of a hole that leans or has a mouth, what is gone of the face. */
export type Cut = {
  readonly feature: Taking
  readonly region: Region
  /** The region, where it is a disc: then what is asked of it is answered exactly. */
  readonly disc?: Disc
  readonly bounds: Bounds
  /** How deep in the wood it begins and ends, in millimetres from the face of the plane. */
  readonly from: number
  readonly to: number
  /** It leans, so that farther in it is not where it is seen; it enters so deep in the wood, by one face or the other. */
  readonly leansFrom?: number
  /** Of a hole with a mouth: the hole itself, and the mouth, which ends sooner. */
  readonly layers?: readonly [Layer, Layer]
}

type Layer = Pick<Cut, 'region' | 'disc' | 'bounds' | 'from' | 'to'>

export type Disc = { readonly centre: Point; readonly radius: number }

/** A cut that is a hole, with its own centre and radius, whatever its mouth is like. */
export type HoleCut = Cut & { readonly bore: Bore; readonly centre: Point; readonly radius: number }

/** `onPlane` leads from the feature's face to the plane, which is so deep; `behind`: it enters from the far side. */
export function cutOf(
  feature: Taking,
  depth: number,
  onPlane: Matrix = identity,
  behind = false,
): Cut | HoleCut {
  const { shape } = feature
  const straightIn = shape.kind === 'bore' && shape.lean ? Math.cos(shape.lean.angle) : 1
  const given = depthOf(shape)
  const deep = given === undefined ? depth : given * straightIn
  const span = behind ? { from: depth - deep, to: depth } : { from: 0, to: deep }
  if (shape.kind !== 'bore') {
    const region = transformRegion(shape.region, onPlane)
    return { feature, region, bounds: regionBounds(region), ...span }
  }
  const centre = apply(onPlane, shape.centre)
  const own = { bore: shape, centre, radius: shape.diameter.mm / 2 }
  const leans = shape.lean ? { leansFrom: behind ? depth : 0 } : {}
  const seen = seenOval(mouthOval(shape), centre, onPlane)
  const whole = { feature, ...seen, ...span, ...leans, ...own }
  if (!shape.mouth) return whole
  const mouthDeep = mouthDepth(shape) * straightIn
  const mouthSpan = behind ? { from: depth - mouthDeep, to: depth } : { from: 0, to: mouthDeep }
  const hole = { ...seenOval(rimOval(shape), centre, onPlane), ...span }
  return { ...whole, layers: [hole, { ...seen, ...mouthSpan }] }
}

/** What a hole or its mouth takes of the face. */
function seenOval(oval: Oval, centre: Point, onPlane: Matrix): Pick<Cut, 'region' | 'disc' | 'bounds'> {
  if (oval.along !== oval.across) {
    const region = { outer: transformContour(ovalContour(oval), onPlane), holes: [] }
    return { region, bounds: regionBounds(region) }
  }
  const radius = oval.along
  const bounds = {
    left: centre.x - radius,
    right: centre.x + radius,
    bottom: centre.y - radius,
    top: centre.y + radius,
  }
  return { region: { outer: circle(centre, radius), holes: [] }, disc: { centre, radius }, bounds }
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

/** Whether two cuts are at the same depth somewhere, as far as both are there where they are seen. */
export function shareDepth(a: Cut, b: Cut): boolean {
  const [[aFrom, aTo], [bFrom, bTo]] = [whereSeen(a), whereSeen(b)]
  if (aFrom < aTo && bFrom < bTo) return aFrom < bTo && bFrom < aTo
  return aFrom <= bTo && bFrom <= aTo
}

/**
 * Whether a face shows how two cuts lie to each other: where both go straight in, or begin on the same face, where a
 * mouth and an ellipse are as they are seen. Otherwise they meet in the wood, if they do.
 */
export function areSeenTogether(a: Cut, b: Cut): boolean {
  if (!shareDepth(a, b)) return false
  return a.feature.face === b.feature.face || (isStraight(a) && isStraight(b))
}

/** Whether what is seen on the face is what goes down into the wood. */
export function isStraight({ feature: { shape } }: Cut): boolean {
  return shape.kind !== 'bore' || isPlain(shape)
}

/** The parts of a cut, each as deep as it goes. */
export function layersOf(cut: Cut): readonly Cut[] {
  const { layers, ...whole } = cut
  return layers?.map(layer => ({ ...whole, ...layer })) ?? [cut]
}

/** From how deep to how deep a cut is where it is seen; a leaning hole at its own face alone. */
export function whereSeen({ from, to, leansFrom }: Cut): readonly [number, number] {
  return leansFrom === undefined ? [from, to] : [leansFrom, leansFrom]
}
