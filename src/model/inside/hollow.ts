import type { FaceName } from '../../finding/face-name.ts'
import { chordPoints } from '../../geometry/approximate/chords.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { type Body, hullOfPoints } from '../../geometry/solid/body.ts'
import { along, dot, times } from '../../geometry/solid/point3.ts'
import { bodyOf, clip, prismoid } from '../../geometry/solid/polyhedron.ts'
import { orientation } from '../../number/predicates.ts'
import type { Placed, Shape } from '../feature.ts'
import { type Face, faceOf, type Solid } from '../part.ts'
import { toPart } from '../pose.ts'
import { takenAway } from '../taken-away.ts'
import { rimPieces } from './rim-pieces.ts'
import { wallDeviation } from './walls.ts'

/** What a slot, groove, rebate or eased edge takes away, as a convex body, or one piece of it. Round ends stand as chords. */
export type Hollow = {
  readonly feature: Placed
  readonly face: Face
  readonly body: Body
  /** Where it opens the face it is cut from. */
  readonly opening: Body
  /** From the face, in millimetres. */
  readonly depth: number
}

/**
 * Usually one; what is worked round a whole rim in pieces; none of notches and cut-outs, which go right through and are
 * edges of the wood. A strip beside a straight edge that is no convex body is left out: its wood lies at the edge, where
 * the rules that look at a face see it.
 */
export function hollowsOf(solid: Solid, feature: Placed): readonly Hollow[] {
  const { shape } = feature
  if (shape.kind === 'cut-out' || shape.kind === 'edge-cut') return []
  if (isEasedRim(shape)) return rimOf(solid, feature, shape)
  const hollow = hollowOf(solid, feature)
  return hollow === undefined ? [] : [hollow]
}

type EasedRim = Extract<Shape, { readonly edge: FaceName | 'all' }> & { readonly edge: 'all' }

function isEasedRim(shape: Shape): shape is EasedRim {
  return 'edge' in shape && shape.edge === 'all'
}

/** Of a rounding the chamfer between its ends, which holds what goes. */
function rimOf(solid: Solid, feature: Placed, shape: EasedRim): readonly Hollow[] {
  const face = faceOf(solid, feature.face)
  const [width, depth] =
    shape.kind === 'chamfer' ? [shape.width.mm, shape.depth.mm] : [shape.radius.mm, shape.radius.mm]
  return rimPieces(shape.region, width).map(({ inner, outer }) => {
    const onFace = [...inner, ...outer].map(p => toPart(face.pose, p))
    const below = outer.map(p => along(toPart(face.pose, p), face.pose.out, -depth))
    const body = hullOfPoints([...onFace, ...below])
    return { feature, face, body, opening: hullOfPoints(onFace), depth }
  })
}

function hollowOf(solid: Solid, feature: Placed): Hollow | undefined {
  const taken = takenAway(solid, feature)
  if (taken === undefined) return undefined
  const { pose, region, depth, slope } = taken
  const corners = chordPoints(region.outer, wallDeviation)
  if (region.holes.length > 0 || !isConvex(corners)) return undefined
  const rim = corners.map(p => toPart(pose, p))
  const prism = prismoid(
    rim,
    rim.map(p => along(p, pose.out, -depth)),
  )
  const body = bodyOf(
    slope === undefined
      ? prism
      : clip(prism, { normal: times(slope.out, -1), offset: -dot(slope.out, slope.point) }),
  )
  if (body === undefined) return undefined
  return { feature, face: faceOf(solid, feature.face), body, opening: hullOfPoints(rim), depth }
}

/** Whether a polygon turns one way all round. */
function isConvex(corners: readonly Point[]): boolean {
  const turns = corners.map((p, i) => orientation(corners.at(i - 1)!, p, corners[(i + 1) % corners.length]!))
  return turns.every(turn => turn >= 0) || turns.every(turn => turn <= 0)
}
