import { pointInRegion } from '../../geometry/measure/inside.ts'
import { reach as reachOfBody } from '../../geometry/solid/body.ts'
import { dot, type Point3, times } from '../../geometry/solid/point3.ts'
import { type Cone, type Plane3, reachOf, section } from '../../geometry/solid/ring.ts'
import { coincident } from '../../number/tolerance.ts'
import { type Axis, pointAlong } from '../bore/axis.ts'
import { isSquareToFaces, type Wall, type Wood } from './walls.ts'

/** Where an axis goes through the outside of the wood, in millimetres along it. */
export type Crossing = { readonly distance: number; readonly wall: Wall }

/** A stretch of an axis in the wood. */
export type Stretch = { readonly from: Crossing; readonly to: Crossing }

/** The stretches of wood that an axis goes through from where it begins, in its order. Notches and cut-outs are air. */
export function stretchesAlong(wood: Wood, axis: Axis): readonly Stretch[] {
  // front and back have one outline: straight through them an axis meets both or none
  const straight = isSquareToFaces(axis.into)
  if (straight && !isInOutline(wood, axis.from)) return []
  const crossings = (straight ? wood.faces : wood.walls)
    .flatMap((wall): Crossing[] => {
      const distance = distanceTo(wall.plane, axis)
      if (distance === undefined || distance < -coincident) return []
      return straight || isOn(wall, pointAlong(axis, distance), wood) ? [{ distance, wall }] : []
    })
    .sort((a, b) => a.distance - b.distance)
  const stretches: Stretch[] = []
  let from: Crossing | undefined
  for (const crossing of crossings) {
    const leaves = dot(crossing.wall.plane.normal, axis.into) > 0
    if (!leaves) from ??= crossing
    else if (from !== undefined) {
      if (crossing.distance - from.distance > coincident) stretches.push({ from, to: crossing })
      from = undefined
    }
  }
  return stretches
}

/** Whether a round bar goes through a wall with all of its rim. */
export function goesThrough(cone: Cone, { surface, plane, body }: Wall): boolean {
  if (typeof surface === 'string') return true
  if (surface.kind === 'arc') return false
  const ring = section(cone, plane)
  if (ring === undefined) return false
  const { from, to } = surface
  const size = Math.hypot(to.x - from.x, to.y - from.y)
  const along: Point3 = { x: (to.x - from.x) / size, y: (to.y - from.y) / size, z: 0 }
  const ways = [along, times(along, -1), { x: 0, y: 0, z: 1 }, { x: 0, y: 0, z: -1 }]
  return ways.every(way => reachOf(ring, way) <= reachOfBody(body, way) + coincident)
}

function distanceTo({ normal, offset }: Plane3, { from, into }: Axis): number | undefined {
  const rate = dot(normal, into)
  // along the plane, as near as a rounded direction can be
  if (Math.abs(rate) <= Number.EPSILON) return undefined
  return (offset - dot(normal, from)) / rate
}

function isOn({ surface, body }: Wall, at: Point3, wood: Wood): boolean {
  if (typeof surface === 'string') return isInOutline(wood, at)
  const { low, high } = body.box
  return (
    at.z >= -coincident &&
    at.z <= wood.thickness + coincident &&
    at.x >= low.x - coincident &&
    at.x <= high.x + coincident &&
    at.y >= low.y - coincident &&
    at.y <= high.y + coincident
  )
}

function isInOutline({ regions }: Wood, at: Point3): boolean {
  return regions.some(region => pointInRegion(region, at) !== 'outside')
}
