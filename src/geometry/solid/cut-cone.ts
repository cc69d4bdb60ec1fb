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
  const cutting = planes.filter(plane => !isWithin(whole, plane))
  if (cutting.length === 0) return whole
  if (
    cutting.some(({ normal, offset }) => -dot(whole.farthest(reversed(normal)), reversed(normal)) >= offset)
  ) {
    return undefined
  }
  const rings = cutEnds(cone, axis, ends, cutting)
  if (rings !== undefined) return hullOfRings(rings)
  return bodyOf(cutting.reduce(clip, prismoid(...cornersOfRings(ends, maxDeviation))))
}

function reversed({ x, y, z }: Point3): Point3 {
  return { x: -x, y: -y, z: -z }
}

/** The ellipses that the ends become, where planes that cut only one end each make them. */
function cutEnds(
  cone: Cone,
  axis: Point3,
  ends: readonly [Ring, Ring],
  cutting: readonly Plane3[],
): readonly [Ring, Ring] | undefined {
  const front = cutting.filter(({ normal }) => dot(normal, axis) < 0)
  const back = cutting.filter(({ normal }) => dot(normal, axis) > 0)
  if (front.length > 1 || back.length > 1 || front.length + back.length < cutting.length) return undefined
  const first = front[0] === undefined ? ends[0] : section(cone, front[0])
  const last = back[0] === undefined ? ends[1] : section(cone, back[0])
  if (first === undefined || last === undefined) return undefined
  const apart = -reachOf(last, reversed(axis)) - reachOf(first, axis)
  return apart >= -coincident ? [first, last] : undefined
}
