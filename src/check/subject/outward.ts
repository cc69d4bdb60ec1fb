import { nearestOnSegment } from '../../geometry/measure/nearest.ts'
import { type Body, reach as reachOfBody } from '../../geometry/solid/body.ts'
import { cutCone } from '../../geometry/solid/cut-cone.ts'
import { nearBetween } from '../../geometry/solid/near-boxes.ts'
import { along, dot, midpoint3, type Point3, times } from '../../geometry/solid/point3.ts'
import type { Plane3 } from '../../geometry/solid/ring.ts'
import { type Apart, apart } from '../../geometry/solid/separation.ts'
import { mouthDepth } from '../../model/bore/mouth.ts'
import { isPlain } from '../../model/feature.ts'
import { type Bored, distanceAlong, planeOf } from '../../model/inside/bored.ts'
import { isSquareToFaces, isWood, type Wall, type Wood, wallDeviation } from '../../model/inside/walls.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Workshop } from '../../workshop/workshop.ts'
import { clearBesideHole } from '../wood/limits.ts'
import { isAtEnd } from './encounters.ts'
import { isSeenOutside, type Seen, woodSeenBetween } from './seen.ts'

/**
 * A hole that comes near to the outside of the wood, or goes through it, elsewhere than where it begins and where a
 * through hole is meant to come out.
 */
export type Outward = {
  readonly bored: Bored
  readonly wall: Wall
  /** The wood between the two; negative: how far the hole reaches beyond. */
  readonly clear: number
  /** On the hole, where it is nearest. */
  readonly at: Point3
  readonly where: 'mouth' | 'side' | 'end'
  /** Whether the bit heads for this wall, by less than half a right angle from square. */
  readonly ahead: boolean
}

/** Half a right angle: less than that from square is ahead. */
const aheadAbove = Math.SQRT1_2

/** Every hole with every wall that it comes nearer to than a hole as wide ought to, in the order of the plan. */
export function outwardOf(
  bores: readonly Bored[],
  wood: Wood,
  seen: Seen,
  workshop: Workshop,
): readonly Outward[] {
  // holes that go straight in run along all of the sides, and these have nothing to be asked then
  const straight = bores.every(({ feature, axis }) => isPlain(feature.shape) && isSquareToFaces(axis.into))
  const walls = (straight ? wood.faces : wood.walls).filter(wall =>
    bores.some(bored => !isSeenOnTheFace(bored, wall)),
  )
  return nearBetween(
    bores.map(({ box }) => box),
    walls.map(({ body }) => body.box),
    Math.max(0, ...bores.map(bored => reachOf(bored, workshop))),
  )
    .flatMap(([i, j]) => outward(bores[i]!, walls[j]!, wood, reachOf(bores[i]!, workshop)))
    .filter(found => !isSeen(found, seen))
}

/** The most wood (mm) that is asked for round a hole; the flat walls that stand for an arc may lie a little beyond it. */
function reachOf({ radius }: Bored, workshop: Workshop): number {
  return Math.max(workshop.clear.underPoint, clearBesideHole(2 * radius, workshop)) + wallDeviation
}

function outward(bored: Bored, wall: Wall, wood: Wood, reach: number): readonly Outward[] {
  if (isWanted(bored, wall) || isSeenOnTheFace(bored, wall)) return []
  const found = nearest(bored, wall, reach)
  if (found === undefined) return []
  const { distance, first, second } = found
  const ahead = dot(wall.plane.normal, bored.axis.into) > aheadAbove
  const meets = distance <= coincident
  // what lies between is air where the hole runs through a notch
  if (!meets && !isWood(wood, midpoint3(first, second))) return []
  const where = meets && ahead && !bored.through ? 'end' : whereOn(bored, first)
  const clear = meets ? -beyond(bored, wall, wood) : trueDistance(bored, wall, found)
  return [{ bored, wall, clear, at: first, where, ahead }]
}

/** The distance closed exactly: to an arc as an arc, to the rest of the plane where it is that which is nearest. */
function trueDistance(bored: Bored, { surface, plane }: Wall, { distance, first }: Apart): number {
  if (typeof surface !== 'string' && surface.kind === 'arc') return nearestOnSegment(surface, first).distance
  const toPlane = plane.offset - farthestOf(bored, plane)
  return distance - toPlane <= coincident ? toPlane : distance
}

/** What a face shows: the rim of a hole near an edge, past it, or in a notch. */
function isSeen({ bored: { feature }, wall: { cut }, clear, where }: Outward, seen: Seen): boolean {
  if (where === 'end') return false
  if (clear > 0) return where === 'mouth'
  if (cut === undefined) return isSeenOutside(seen, feature)
  return (woodSeenBetween(seen, feature, cut) ?? Infinity) <= coincident
}

/** The face it begins on, what faces the bit there, and where a through hole is to come out. */
function isWanted({ axis, face, through, stretches }: Bored, { plane, surface, cut }: Wall): boolean {
  const heads = dot(plane.normal, axis.into)
  if (heads < -aheadAbove) return true
  const begins =
    Math.abs(dot(plane.normal, axis.from) - plane.offset) <= coincident &&
    dot(plane.normal, face.pose.out) > aheadAbove
  if (begins || !through) return begins
  return heads > aheadAbove && (cut === undefined || surface === stretches.at(-1)?.to.wall.surface)
}

/** Of a plain hole what runs along it is as near all the way down as it is on the face. */
function isSeenOnTheFace({ feature, axis, depth }: Bored, { plane }: Wall): boolean {
  return isPlain(feature.shape) && Math.abs(dot(plane.normal, axis.into)) * depth <= coincident
}

function nearest(bored: Bored, { body }: Wall, reach: number): Apart | undefined {
  let best: Apart | undefined
  for (const own of bodiesOf(bored)) {
    const found = apart(own, body, {
      maxDeviation: coincident,
      reach: Math.min(reach, best?.distance ?? Infinity),
    })
    if (found !== undefined && (best === undefined || found.distance < best.distance)) best = found
  }
  return best
}

/** How far a hole reaches beyond a wall: a stopped one as deep as it is, one that goes through up to the side across. */
function beyond(bored: Bored, { plane: { normal, offset } }: Wall, wood: Wood): number {
  if (!bored.through) return Math.max(0, farthestOf(bored, { normal, offset }) - offset)
  const { bar, face } = bored
  const inward = times(face.pose.out, -1)
  const across = Math.max(...wood.walls.map(({ body }) => reachOfBody(body, inward)))
  // on until all of the rim is past that side, as far as a lean of 80° takes
  const on = 6 * (across - dot(inward, bored.axis.from) + bored.radius)
  const longer = { ...bar, to: along(bored.axis.from, bored.axis.into, on) }
  const body = cutCone(longer, [planeOf(face), { normal: inward, offset: across }], wallDeviation)
  return body === undefined ? 0 : Math.max(0, reachOfBody(body, normal) - offset)
}

function farthestOf(bored: Bored, { normal }: Plane3): number {
  return Math.max(...bodiesOf(bored).map(body => reachOfBody(body, normal)))
}

/** Of a through hole nobody asks what is beyond the wood. */
function bodiesOf({ pieces, inWood, through }: Bored): readonly Body[] {
  return (through ? inWood : pieces).map(({ body }) => body)
}

function whereOn(bored: Bored, at: Point3): Outward['where'] {
  if (isAtEnd(bored, at)) return 'end'
  const { shape } = bored.feature
  const rim = bored.radius * Math.tan(shape.lean?.angle ?? 0)
  return distanceAlong(bored.axis, at) <= mouthDepth(shape) + rim + coincident ? 'mouth' : 'side'
}
