import type { DistanceFrom, FaceName } from '../../finding/face-name.ts'
import { isSide } from '../../finding/face-name.ts'
import type { Side } from '../../finding/side.ts'
import { faceDirections } from '../../plan/face-directions.ts'
import { boxPose, type Extent, inward } from '../box-faces.ts'
import type { Point3, Pose } from '../pose.ts'
import { onPlane } from '../pose.ts'

/** The axis of a face that distances from one of its sides are taken along: where they start, and which way they go. */
export type Ruler = { readonly axis: 'x' | 'y'; readonly start: number; readonly sign: 1 | -1 }

/** A face as positions on it see it, in its own millimetres. */
export type FaceFrame = {
  readonly id: FaceName
  readonly pose: Pose
  readonly along: readonly [DistanceFrom, DistanceFrom]
  readonly across: readonly [DistanceFrom, DistanceFrom]
  readonly ruler: (from: DistanceFrom) => Ruler
}

/** One of the six sides. */
export function sideFrame(id: Side, extent: Extent): FaceFrame {
  const pose = boxPose(id, extent)
  const ruler = (from: DistanceFrom): Ruler => {
    if (!isSide(from)) throw new RangeError(`no distance on the ${id} starts at ${from}`)
    const { axis, start, sign } = inward(from, extent)
    const at: Point3 = { x: 0, y: 0, z: 0, [axis]: start }
    const onFace = onPlane(pose, at)
    const lies = pose.right[axis] === 0 ? 'y' : 'x'
    const direction = lies === 'x' ? pose.right[axis] : pose.up[axis]
    return { axis: lies, start: onFace[lies], sign: direction * sign > 0 ? 1 : -1 }
  }
  return { id, pose, ...faceDirections(id), ruler }
}

/**
 * A straight edge of an outline that runs anticlockwise, from the theoretical corner it starts in, `length` long.
 * `backwards`: the plan draws it the other way, so that its start is the far end.
 */
export function edgeFrame(
  name: string,
  from: { readonly x: number; readonly y: number },
  to: { readonly x: number; readonly y: number },
  thickness: number,
  backwards: boolean,
): FaceFrame {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const right = { x: (to.x - from.x) / length, y: (to.y - from.y) / length, z: 0 }
  const pose: Pose = {
    origin: { x: from.x, y: from.y, z: 0 },
    right,
    up: { x: 0, y: 0, z: 1 },
    out: { x: right.y, y: -right.x, z: 0 },
  }
  const ruler = (side: DistanceFrom): Ruler => {
    switch (side) {
      case 'start':
      case 'end':
        return (side === 'start') === backwards
          ? { axis: 'x', start: length, sign: -1 }
          : { axis: 'x', start: 0, sign: 1 }
      case 'back':
        return { axis: 'y', start: 0, sign: 1 }
      case 'front':
        return { axis: 'y', start: thickness, sign: -1 }
      default:
        throw new RangeError(`no distance on an edge starts at ${side}`)
    }
  }
  const id: FaceName = `edge:${name}`
  return { id, pose, ...faceDirections(id), ruler }
}
