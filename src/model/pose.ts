import type { Point } from '../geometry/shape/point.ts'

/** A place or direction in a part, in millimetres: x along the length from the drawn left end, y across the width from the bottom edge, z through the thickness from the back to the front. */
export type Point3 = { readonly x: number; readonly y: number; readonly z: number }

/**
 * Where a plane lies in a part: `right` and `up` are the directions of its x and y as somebody sees it who looks
 * at the wood from outside, `out` leaves the wood. The three are unit vectors, right-handed: right × up = out.
 */
export type Pose = {
  readonly origin: Point3
  readonly right: Point3
  readonly up: Point3
  readonly out: Point3
}

/** The place in the part of a point on the plane. */
export function toPart(pose: Pose, p: Point): Point3 {
  return {
    x: pose.origin.x + pose.right.x * p.x + pose.up.x * p.y,
    y: pose.origin.y + pose.right.y * p.x + pose.up.y * p.y,
    z: pose.origin.z + pose.right.z * p.x + pose.up.z * p.y,
  }
}

/** Where a place in the part is seen on the plane, looking straight at it; the distance from the plane is dropped. */
export function onPlane(pose: Pose, p: Point3): Point {
  const d = { x: p.x - pose.origin.x, y: p.y - pose.origin.y, z: p.z - pose.origin.z }
  return { x: dot(d, pose.right), y: dot(d, pose.up) }
}

export function dot(a: Point3, b: Point3): number {
  return a.x * b.x + a.y * b.y + a.z * b.z
}
