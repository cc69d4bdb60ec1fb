import type { FaceName } from '../../finding/face-name.ts'
import type { Side } from '../../finding/side.ts'
import { regionBounds } from '../../geometry/measure/bounds.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import { type Face, faceOf, type Part, type Solid } from '../../model/part.ts'
import { onPlane, type Point3, type Pose } from '../../model/pose.ts'

/** A face of the block as it is on the wood: where it lies, and how far it reaches in its own millimetres. */
export type BlockFace = { readonly id: FaceName; readonly pose: Pose; readonly region: Region }

/**
 * The block that paper is wrapped round: as large as it was measured, else as the plan has it. What stands on it keeps
 * its distances from the face side, the face edge and the reference end.
 */
export type Block = {
  readonly face: (id: FaceName) => BlockFace
  /** Where on a face of the block a place of the part as planned is seen. */
  readonly seenOn: (id: FaceName, place: Point3) => Point
  readonly measured: boolean
}

export function blockOf(part: Part, solid: Solid): Block {
  const { measured } = part
  const planned: Point3 = { x: part.length.mm, y: part.width.mm, z: part.thickness.mm }
  // of a shaped part the outline is what it is, whatever its block measures
  if (part.shape !== 'rectangle') {
    return {
      face: id => faceOf(solid, id),
      seenOn: (id, place) => onPlane(faceOf(solid, id).pose, place),
      measured: false,
    }
  }
  const real: Point3 =
    measured === undefined
      ? planned
      : { x: measured.length.mm, y: measured.width.mm, z: measured.thickness.mm }
  const more = { x: real.x - planned.x, y: real.y - planned.y, z: real.z - planned.z }
  const shifted = shiftFrom(part, solid, more)
  const face = (id: FaceName): BlockFace => blockFace(faceOf(solid, id), planned, more)
  return {
    face,
    seenOn: (id, { x, y, z }) =>
      onPlane(face(id).pose, { x: x + shifted.x, y: y + shifted.y, z: z + shifted.z }),
    measured: measured !== undefined,
  }
}

/** What lies at the low end of an axis stays; what lies at the high end moves by what the block is larger. */
function blockFace({ id, pose, region }: Face, planned: Point3, more: Point3): BlockFace {
  const high = (at: number, size: number, by: number): number => (at > size / 2 ? at + by : at)
  const { origin, right, up } = pose
  const along = ({ x, y, z }: Point3): number =>
    Math.abs(x) * more.x + Math.abs(y) * more.y + Math.abs(z) * more.z
  const box = regionBounds(region)
  return {
    id,
    pose: {
      ...pose,
      origin: {
        x: high(origin.x, planned.x, more.x),
        y: high(origin.y, planned.y, more.y),
        z: high(origin.z, planned.z, more.z),
      },
    },
    region: rectangle({ left: 0, bottom: 0, right: box.right + along(right), top: box.top + along(up) }),
  }
}

/** How far a place has to move so that it keeps its distances from the reference sides. */
function shiftFrom({ faceEdge, referenceEnd }: Part, { faces }: Solid, more: Point3): Point3 {
  const highReference = (side: Side, axis: 'x' | 'y' | 'z'): number =>
    faces[side].pose.out[axis] > 0 ? more[axis] : 0
  return {
    x: highReference(referenceEnd, 'x'),
    y: highReference(faceEdge, 'y'),
    z: highReference('front', 'z'),
  }
}
