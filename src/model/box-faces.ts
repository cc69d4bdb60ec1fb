import type { FaceName } from '../finding/face-name.ts'
import type { Side } from '../finding/side.ts'
import type { Point3, Pose } from './pose.ts'

/** Length, width and thickness of a part in millimetres. */
export type Extent = { readonly length: number; readonly width: number; readonly thickness: number }

const plusX: Point3 = { x: 1, y: 0, z: 0 }
const minusX: Point3 = { x: -1, y: 0, z: 0 }
const plusY: Point3 = { x: 0, y: 1, z: 0 }
const minusY: Point3 = { x: 0, y: -1, z: 0 }
const plusZ: Point3 = { x: 0, y: 0, z: 1 }
const minusZ: Point3 = { x: 0, y: 0, z: -1 }

/**
 * The six faces of a box as they are seen from outside. Front, back and the ends are seen with the top up; top and
 * bottom with the left end at the left.
 *
 *              ┌──── top ────┐
 *       left → │    front    │ ← right        back: turned about the upright, its left is the part's right
 *              └── bottom ───┘
 */
export function boxPose(side: Side, { length, width, thickness }: Extent): Pose {
  switch (side) {
    case 'front':
      return { origin: { x: 0, y: 0, z: thickness }, right: plusX, up: plusY, out: plusZ }
    case 'back':
      return { origin: { x: length, y: 0, z: 0 }, right: minusX, up: plusY, out: minusZ }
    case 'left':
      return { origin: { x: 0, y: 0, z: 0 }, right: plusZ, up: plusY, out: minusX }
    case 'right':
      return { origin: { x: length, y: 0, z: thickness }, right: minusZ, up: plusY, out: plusX }
    case 'top':
      return { origin: { x: 0, y: width, z: thickness }, right: plusX, up: minusZ, out: plusY }
    case 'bottom':
      return { origin: { x: 0, y: 0, z: 0 }, right: plusX, up: plusZ, out: minusY }
  }
}

/** How far the face reaches along its own x and y, in millimetres. */
export function faceExtent(side: Side, { length, width, thickness }: Extent): { right: number; up: number } {
  switch (side) {
    case 'front':
    case 'back':
      return { right: length, up: width }
    case 'left':
    case 'right':
      return { right: thickness, up: width }
    case 'top':
    case 'bottom':
      return { right: length, up: thickness }
  }
}

/**
 * How far it is from a face to the side across from it, in millimetres; from a named edge of an outline, which may lie
 * askew, no farther than the part is large.
 */
export function depthUnder(face: FaceName, { length, width, thickness }: Extent): number {
  switch (face) {
    case 'front':
    case 'back':
      return thickness
    case 'left':
    case 'right':
      return length
    case 'top':
    case 'bottom':
      return width
    default:
      return Math.hypot(length, width)
  }
}

/** The direction in a part that leads away from a side, into the wood: its axis, and where the side lies on it. */
export function inward(side: Side, extent: Extent): { axis: 'x' | 'y' | 'z'; start: number; sign: 1 | -1 } {
  switch (side) {
    case 'left':
      return { axis: 'x', start: 0, sign: 1 }
    case 'right':
      return { axis: 'x', start: extent.length, sign: -1 }
    case 'bottom':
      return { axis: 'y', start: 0, sign: 1 }
    case 'top':
      return { axis: 'y', start: extent.width, sign: -1 }
    case 'back':
      return { axis: 'z', start: 0, sign: 1 }
    case 'front':
      return { axis: 'z', start: extent.thickness, sign: -1 }
  }
}
