import { coincident } from '../../number/tolerance.ts'
import { type Body, hullOfRings } from './body.ts'
import { dot, minus, type Point3, unit3 } from './point3.ts'
import { bodyOf, clip, cornersOfRings, isWithin, prismoid } from './polyhedron.ts'
import { type Cone, circleAbout, type Plane3, type Ring, reachOf, section } from './ring.ts'

/**
 * What of a cone lies on the inner side of every plane (`normal · p ≤ offset`); nothing where nothing does.
 *
 * Where each end is cut by one plane at the most, right through, the body is the hull of two ellipses and exact. A cone
 * that is cut in another way, over the edge of a block perhaps, stands as flat faces inside of it that are no farther
 * from it than `maxDeviation` (mm).
 */
export function cutCone(cone: Cone, planes: readonly Plane3[], maxDeviation: number): Body | undefined {
  const axis = unit3(minus(cone.to, cone.from))
  if (axis === undefined) return undefined
  const ends: readonly [Ring, Ring] = [
    circleAbout(cone.from, axis, cone.radiusFrom),
    circleAbout(cone.to, axis, cone.radiusTo),
  ]
  const whole = hullOfRings(ends)
  const cutting = eachOnce(planes.filter(plane => !isWithin(whole, plane)))
  if (cutting.length === 0) return whole
  if (
    cutting.some(({ normal, offset }) => -dot(whole.farthest(reversed(normal)), reversed(normal)) >= offset)
  ) {
    return undefined
  }
  const cut = cutEnds(cone, axis, ends, cutting)
  if (cut !== undefined && cutting.every(plane => isWithin(cut, plane))) return cut
  return bodyOf(cutting.reduce(clip, prismoid(...cornersOfRings(ends, maxDeviation))))
}

/** The planes without those that are given again: the face that a hole begins on is one of those that bound the wood. */
function eachOnce(planes: readonly Plane3[]): readonly Plane3[] {
  return planes.filter((plane, i) => planes.findIndex(other => isSame(plane, other)) === i)
}

function isSame(a: Plane3, b: Plane3): boolean {
  const [p, q] = [a.normal, b.normal]
  return a.offset === b.offset && p.x === q.x && p.y === q.y && p.z === q.z
}

function reversed({ x, y, z }: Point3): Point3 {
  return { x: -x, y: -y, z: -z }
}

/**
 * What is left of a cone when each end is cut by that plane which takes the most of it; nothing where none cuts right
 * through. The other planes may cut only what is gone by then.
 */
function cutEnds(
  cone: Cone,
  axis: Point3,
  ends: readonly [Ring, Ring],
  cutting: readonly Plane3[],
): Body | undefined {
  const back = reversed(axis)
  const first = shortest(cone, back, ends[0], cutting)
  const last = shortest(cone, axis, ends[1], cutting)
  // how far the end lies behind the beginning where they are nearest
  const apart = -reachOf(last, back) - reachOf(first, axis)
  return apart >= -coincident ? hullOfRings([first, last]) : undefined
}

/** The end of a cone that lies least far in a direction along its axis, of those that planes cut and its own. */
function shortest(cone: Cone, toward: Point3, own: Ring, cutting: readonly Plane3[]): Ring {
  const rings = cutting
    .filter(({ normal }) => dot(normal, toward) > 0)
    .flatMap(plane => section(cone, plane) ?? [])
  return rings.reduce((best, ring) => (reachOf(ring, toward) < reachOf(best, toward) ? ring : best), own)
}
