import type { Point3 } from './point3.ts'

/** The smallest upright box around something, in millimetres. */
export type Box3 = { readonly low: Point3; readonly high: Point3 }

/** The box round points; round none of them it is inside out, and near to nothing. */
export function boxAround(points: readonly Point3[]): Box3 {
  const low = { x: Infinity, y: Infinity, z: Infinity }
  const high = { x: -Infinity, y: -Infinity, z: -Infinity }
  for (const { x, y, z } of points) {
    low.x = Math.min(low.x, x)
    low.y = Math.min(low.y, y)
    low.z = Math.min(low.z, z)
    high.x = Math.max(high.x, x)
    high.y = Math.max(high.y, y)
    high.z = Math.max(high.z, z)
  }
  return { low, high }
}

/** The box round boxes; round none of them it is inside out, and near to nothing. */
export function joinBoxes(boxes: readonly Box3[]): Box3 {
  const low = { x: Infinity, y: Infinity, z: Infinity }
  const high = { x: -Infinity, y: -Infinity, z: -Infinity }
  for (const box of boxes) {
    low.x = Math.min(low.x, box.low.x)
    low.y = Math.min(low.y, box.low.y)
    low.z = Math.min(low.z, box.low.z)
    high.x = Math.max(high.x, box.high.x)
    high.y = Math.max(high.y, box.high.y)
    high.z = Math.max(high.z, box.high.z)
  }
  return { low, high }
}

/** Whether two boxes come as near to each other as `reach` in every direction of the axes. */
export function areNear(a: Box3, b: Box3, reach: number): boolean {
  return (
    a.low.x - b.high.x <= reach &&
    b.low.x - a.high.x <= reach &&
    a.low.y - b.high.y <= reach &&
    b.low.y - a.high.y <= reach &&
    a.low.z - b.high.z <= reach &&
    b.low.z - a.high.z <= reach
  )
}
