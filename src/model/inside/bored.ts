import type { Body } from '../../geometry/solid/body.ts'
import { type Box3, joinBoxes } from '../../geometry/solid/box3.ts'
import { cutCone } from '../../geometry/solid/cut-cone.ts'
import { along, dot, minus } from '../../geometry/solid/point3.ts'
import { isWithin } from '../../geometry/solid/polyhedron.ts'
import type { Cone, Plane3 } from '../../geometry/solid/ring.ts'
import type { BitTip } from '../../workshop/workshop.ts'
import { type Axis, axisOf } from '../bore/axis.ts'
import { mouthDepth } from '../bore/mouth.ts'
import { tipLength, tipOf } from '../bore/tip.ts'
import type { Bore, BoreFeature } from '../feature.ts'
import { type Face, faceOf, type Solid } from '../part.ts'
import { goesThrough, type Stretch, stretchesAlong } from './stretches.ts'
import { type Wood, wallDeviation } from './walls.ts'

/** One of the convex bodies that a bored hole is made of, all about its axis. */
export type BoredPiece = { readonly of: 'mouth' | 'side' | 'tip'; readonly body: Body }

/** A bored hole as the body that the bit takes away. Lengths along the axis are counted from the face. */
export type Bored = {
  readonly feature: BoreFeature
  readonly face: Face
  readonly axis: Axis
  readonly radius: number
  /** To the end of the full diameter; of a through hole to where the axis comes out. */
  readonly depth: number
  /** How far the point of the bit goes beyond that; of a through hole nothing is said of it. */
  readonly tip: number
  readonly through: boolean
  /** The wood that the axis goes through. */
  readonly stretches: readonly Stretch[]
  /** The round bar as wide as the hole, from above the face to its full depth or out of the wood. */
  readonly bar: Cone
  /** From the face inward, as if there were wood all the way. */
  readonly pieces: readonly BoredPiece[]
  /** Of these what lies in the wood. */
  readonly inWood: readonly BoredPiece[]
  readonly box: Box3
}

/** The body of a hole; nothing where it goes through and its axis meets no wood. */
export function boredOf(solid: Solid, wood: Wood, feature: BoreFeature, bits: BitTip): Bored | undefined {
  const bore = feature.shape
  const face = faceOf(solid, feature.face)
  const axis = axisOf(bore, face.pose)
  const stretches = stretchesAlong(wood, axis)
  const through = bore.depth === 'through'
  const depth = bore.depth === 'through' ? stretches.at(-1)?.to.distance : bore.depth.mm
  if (depth === undefined) return undefined
  const entry = planeOf(face)
  const cones = conesOf(bore, axis, depth, through ? undefined : tipOf(bore, bits))
  const cut = (cone: Cone, planes: readonly Plane3[]): Body | undefined =>
    cutCone(cone, [entry, ...planes], wallDeviation)
  const pieces: BoredPiece[] = []
  const inWood: BoredPiece[] = []
  for (const { of, cone } of cones) {
    const piece = cut(cone, [])
    if (piece === undefined) continue
    pieces.push({ of, body: piece })
    for (const span of spansOf(cone, of === 'side' ? stretches : [])) {
      const planes = [...wood.bounds, ...span]
      // what stops inside the wood is all of it there
      const body = planes.every(plane => isWithin(piece, plane)) ? piece : cut(cone, planes)
      if (body !== undefined) inWood.push({ of, body })
    }
  }
  return {
    feature,
    face,
    axis,
    radius: bore.diameter.mm / 2,
    depth,
    tip: through ? 0 : tipLength(bore, bits),
    through,
    stretches,
    bar: cones[0]!.cone,
    pieces,
    inWood,
    box: joinBoxes(pieces.map(({ body }) => body.box)),
  }
}

/** The plane of a face, its normal leaving the wood. */
export function planeOf({ pose: { origin, out } }: Face): Plane3 {
  return { normal: out, offset: dot(out, origin) }
}

/** How far along the axis a place lies, in millimetres. */
export function distanceAlong({ from, into }: Axis, p: { x: number; y: number; z: number }): number {
  return dot(minus(p, from), into)
}

type NamedCone = { readonly of: BoredPiece['of']; readonly cone: Cone }

/** Everything that turns about the axis, each begun so far above the face that the face cuts right through it. */
function conesOf(bore: Bore, axis: Axis, depth: number, tip: BitTip | undefined): readonly NamedCone[] {
  const radius = bore.diameter.mm / 2
  const slope = Math.tan(bore.lean?.angle ?? 0)
  const above = (r: number, growth = 0) => (r * (1 + slope)) / Math.max(1 - slope * growth, Number.EPSILON)
  const cone = (from: number, to: number, radiusFrom: number, radiusTo: number): Cone => ({
    from: along(axis.from, axis.into, from),
    to: along(axis.from, axis.into, to),
    radiusFrom,
    radiusTo,
  })
  // a through hole goes on until the last of its rim is out, on a face as steep as 80°
  const end = tip === undefined ? depth + 6 * radius : depth
  const side: NamedCone = { of: 'side', cone: cone(-above(radius), end, radius, radius) }
  return [side, ...mouthCone(), ...tipCone()]

  function mouthCone(): readonly NamedCone[] {
    const { mouth } = bore
    if (mouth === undefined) return []
    const deep = mouthDepth(bore)
    const wide = mouth.diameter.mm / 2
    if (mouth.kind === 'counterbore') return [{ of: 'mouth', cone: cone(-above(wide), deep, wide, wide) }]
    const growth = Math.tan(mouth.angle / 2)
    const start = above(wide, growth)
    return [{ of: 'mouth', cone: cone(-start, deep, wide + start * growth, radius) }]
  }

  function tipCone(): readonly NamedCone[] {
    if (tip === undefined) return []
    const long = tipLength(bore, tip)
    if (long === 0) return []
    // the spur of a brad point stands out as far as it is wide: common practice, no source
    const wide = tip.point === 'brad' ? Math.min(radius, long / 2) : radius
    return [{ of: 'tip', cone: cone(depth, depth + long, wide, 0) }]
  }
}

/**
 * The planes that part each stretch of wood from the air before and after it. Where the rim of the hole does not go
 * through the same wall as its axis does, nothing is parted there.
 */
function spansOf(cone: Cone, stretches: readonly Stretch[]): readonly (readonly Plane3[])[] {
  const spans: Plane3[][] = [[]]
  stretches.forEach(({ to }, i) => {
    const next = stretches[i + 1]?.from
    const parted = goesThrough(cone, to.wall) && (next === undefined || goesThrough(cone, next.wall))
    if (!parted) return
    spans.at(-1)!.push(to.wall.plane)
    // the plane of the wall where the wood begins again has the wood on its inner side as every wall has
    if (next !== undefined) spans.push([next.wall.plane])
  })
  return spans
}
