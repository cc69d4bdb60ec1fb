import { nearAmong } from '../../geometry/solid/near-boxes.ts'
import { overlapOf } from '../../geometry/solid/overlap.ts'
import { cross, length, midpoint3, minus, type Point3, unit3 } from '../../geometry/solid/point3.ts'
import { apart } from '../../geometry/solid/separation.ts'
import type { Hollow } from '../../model/inside/hollow.ts'
import { isWood, type Wood } from '../../model/inside/walls.ts'
import { toPart } from '../../model/pose.ts'
import { lineOfStrip } from '../../model/strip.ts'
import { coincident } from '../../number/tolerance.ts'
import { crossing } from '../wood/runs.ts'
import { areOnOneFace } from './on-one-face.ts'

/** Two slots, grooves or rebates of different faces that come near to each other inside the wood, or meet there. */
export type HollowsNear = {
  readonly first: Hollow
  readonly second: Hollow
  /** 0 where they meet. */
  readonly distance: number
  /** Where they meet: how far the one has to move to be clear of the other. */
  readonly overlap: number
  /** On the first and on the second, where they are nearest. */
  readonly places: readonly [Point3, Point3]
}

/**
 * All of them nearer than `limit` (mm), in the order of the plan. What shows on one face is left to the rules that look
 * at it, and so are eased edges, over which every groove runs out.
 */
export function hollowsNear(hollows: readonly Hollow[], wood: Wood, limit: number): readonly HollowsNear[] {
  const sunk = hollows.filter(isSunk)
  return nearAmong(
    sunk.map(({ body }) => body.box),
    limit,
  ).flatMap(([i, j]): readonly HollowsNear[] => {
    const [first, second] = [sunk[i]!, sunk[j]!]
    if (areOnOneFace(first, second)) return []
    const found = apart(first.body, second.body, { maxDeviation: coincident, reach: limit })
    if (found === undefined || found.distance >= limit - coincident) return []
    // above a notch there is nothing that either of them could be cut into
    if (!isWood(wood, midpoint3(found.first, found.second))) return []
    const places = [found.first, found.second] as const
    if (found.distance > coincident) {
      return [{ first, second, distance: found.distance, overlap: 0, places }]
    }
    if (crossOnPurpose(first, second)) return []
    const { by } = overlapOf([[first.body, second.body]], [first.face.pose.out, second.face.pose.out])
    return [{ first, second, distance: 0, overlap: by, places }]
  })
}

function isSunk({ feature: { shape } }: Hollow): boolean {
  return shape.kind === 'pocket' || shape.kind === 'groove' || shape.kind === 'rebate'
}

/** Grooves and rebates run into each other at the corners of a frame. */
function crossOnPurpose(a: Hollow, b: Hollow): boolean {
  const [one, other] = [runOf(a), runOf(b)]
  return one !== undefined && other !== undefined && length(cross(one, other)) >= crossing
}

/** The direction in the part that a groove or rebate runs in. */
function runOf({ feature: { shape }, face: { pose } }: Hollow): Point3 | undefined {
  if (shape.kind !== 'groove' && shape.kind !== 'rebate') return undefined
  const side = shape.region.outer.segments.find(s => s.kind === 'line' && s.tag === lineOfStrip)
  return side && unit3(minus(toPart(pose, side.to), toPart(pose, side.from)))
}
