import type { Extent } from './box-faces.ts'
import type { Solid } from './part.ts'

/** Length, width and thickness of the box that a solid is made from, of either hand. */
export function extentOf({ faces: { front, back, left, right, top, bottom } }: Pick<Solid, 'faces'>): Extent {
  return {
    length: Math.abs(right.pose.origin.x - left.pose.origin.x),
    width: top.pose.origin.y - bottom.pose.origin.y,
    thickness: front.pose.origin.z - back.pose.origin.z,
  }
}
