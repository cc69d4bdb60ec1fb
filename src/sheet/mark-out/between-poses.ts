import type { Matrix } from '../../geometry/shape/matrix.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { dot } from '../../geometry/solid/point3.ts'
import { onPlane, type Point3, type Pose, toPart } from '../../model/pose.ts'

/** A direction in the part as it is seen on a plane: its length is what is seen of it. */
export function seenDirection({ right, up }: Pose, d: Point3): Point {
  return { x: dot(d, right), y: dot(d, up) }
}

/** The map that takes points of one plane to where they are seen on another one that is parallel to it. */
export function throughPoses(from: Pose, on: Pose): Matrix {
  const x = seenDirection(on, from.right)
  const y = seenDirection(on, from.up)
  const start = onPlane(on, toPart(from, { x: 0, y: 0 }))
  return { a: x.x, b: x.y, c: y.x, d: y.y, e: start.x, f: start.y }
}
