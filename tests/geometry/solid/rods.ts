import fc from 'fast-check'
import { type Body, hullOfRings } from '../../../src/geometry/solid/body.ts'
import { along, type Point3, unit3 } from '../../../src/geometry/solid/point3.ts'
import { type Cone, circleAbout } from '../../../src/geometry/solid/ring.ts'

export const at = (x: number, y: number, z: number): Point3 => ({ x, y, z })

/** A round bar or cone about its axis. */
export function rod(from: Point3, to: Point3, radiusFrom: number, radiusTo = radiusFrom): Body {
  const axis = unit3({ x: to.x - from.x, y: to.y - from.y, z: to.z - from.z })!
  return hullOfRings([circleAbout(from, axis, radiusFrom), circleAbout(to, axis, radiusTo)])
}

const place = fc.double({ min: -30, max: 30, noNaN: true })
const anyPoint = fc.record({ x: place, y: place, z: place })

/** Any direction; what is too short to have one points up. */
export const anyDirection = fc
  .record({ x: place, y: place, z: place })
  .map(d => (Math.hypot(d.x, d.y, d.z) > 1 ? unit3(d)! : at(0, 0, 1)))

export const anyCone: fc.Arbitrary<Cone> = fc
  .tuple(
    anyPoint,
    anyDirection,
    fc.double({ min: 0.5, max: 40, noNaN: true }),
    fc.double({ min: 0.2, max: 8, noNaN: true }),
    fc.oneof(fc.constant(0), fc.constant(1), fc.double({ min: 0, max: 2, noNaN: true })),
  )
  .map(([from, d, long, radiusFrom, share]) => ({
    from,
    to: along(from, d, long),
    radiusFrom,
    radiusTo: radiusFrom * share,
  }))

export function bodyOfCone({ from, to, radiusFrom, radiusTo }: Cone): Body {
  return rod(from, to, radiusFrom, radiusTo)
}
