import { chordPoints } from '../../geometry/approximate/chords.ts'
import { type Body, hullOfPoints } from '../../geometry/solid/body.ts'
import { along } from '../../geometry/solid/point3.ts'
import type { Placed } from '../feature.ts'
import { type Face, faceOf, type Solid } from '../part.ts'
import { toPart } from '../pose.ts'
import { type Wood, wallDeviation } from './walls.ts'

/** What a slot or mortise takes away, as a convex body. Its round ends stand as chords. */
export type Hollow = {
  readonly feature: Placed
  readonly face: Face
  readonly body: Body
  /** Where it opens the face it is cut from. */
  readonly opening: Body
  /** What it ends in, where it does not go through. */
  readonly floor?: Body
  /** From the face, in millimetres. */
  readonly depth: number
}

/** Notches and cut-outs, which go right through, are edges of the wood and no hollows in it. */
export function hollowOf(solid: Solid, wood: Wood, feature: Placed): Hollow | undefined {
  const { shape } = feature
  if (shape.kind !== 'pocket') return undefined
  const face = faceOf(solid, feature.face)
  const through = shape.depth === 'through'
  const depth = shape.depth === 'through' ? depthOf(wood, face) : shape.depth.mm
  const { pose } = face
  const rim = chordPoints(shape.region.outer, wallDeviation).map(p => toPart(pose, p))
  const bottom = rim.map(p => along(p, pose.out, -depth))
  return {
    feature,
    face,
    body: hullOfPoints([...rim, ...bottom]),
    opening: hullOfPoints(rim),
    ...(through ? {} : { floor: hullOfPoints(bottom) }),
    depth,
  }
}

/** How far a slot that goes through reaches: to the face across, or past all of the wood from an edge of an outline. */
function depthOf({ thickness, walls }: Wood, { id }: Face): number {
  if (id === 'front' || id === 'back') return thickness
  const { low, high } = walls[0]!.body.box
  if (id === 'left' || id === 'right') return high.x - low.x
  if (id === 'top' || id === 'bottom') return high.y - low.y
  return Math.hypot(high.x - low.x, high.y - low.y)
}
