import { chordPoints } from '../../geometry/approximate/chords.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { type Body, hullOfPoints } from '../../geometry/solid/body.ts'
import { along, dot, times } from '../../geometry/solid/point3.ts'
import { bodyOf, clip, prismoid } from '../../geometry/solid/polyhedron.ts'
import { orientation } from '../../number/predicates.ts'
import type { Placed } from '../feature.ts'
import { type Face, faceOf, type Solid } from '../part.ts'
import { toPart } from '../pose.ts'
import { takenAway } from '../taken-away.ts'
import { wallDeviation } from './walls.ts'

/** What a slot, groove, rebate or bevel takes away, as a convex body. Round ends stand as chords. */
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
 * Notches and cut-outs, which go right through, are edges of the wood and no hollows in it. What is worked round a whole
 * rim, or along a curve, is no convex body: its wood lies at the edge, where the rules that look at a face see it.
 */
export function hollowOf(solid: Solid, feature: Placed): Hollow | undefined {
  const { kind } = feature.shape
  if (kind === 'cut-out' || kind === 'edge-cut') return undefined
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
