import { along } from '../../geometry/solid/point3.ts'
import type { Bore } from '../feature.ts'
import { type Point3, type Pose, toPart } from '../pose.ts'

/** The line in the part that a bit's centre goes along: where it enters, and the unit vector of its way into the wood. */
export type Axis = { readonly from: Point3; readonly into: Point3 }

/** The axis of a bore on the face that lies at `pose`. A rod leans the way that the bit comes from. */
export function axisOf({ centre, lean }: Bore, pose: Pose): Axis {
  const from = toPart(pose, centre)
  const { right, up, out } = pose
  if (lean === undefined) return { from, into: combine(-1, out, 0, right, 0, up) }
  const aside = Math.sin(lean.angle)
  const along = aside * Math.cos(lean.toward)
  const across = aside * Math.sin(lean.toward)
  return { from, into: combine(-Math.cos(lean.angle), out, -along, right, -across, up) }
}

/** So many millimetres along the axis into the wood. */
export function pointAlong({ from, into }: Axis, distance: number): Point3 {
  return along(from, into, distance)
}

function combine(a: number, u: Point3, b: number, v: Point3, c: number, w: Point3): Point3 {
  return {
    // adding zero makes one zero of the two
    x: a * u.x + b * v.x + c * w.x + 0,
    y: a * u.y + b * v.y + c * w.y + 0,
    z: a * u.z + b * v.z + c * w.z + 0,
  }
}
