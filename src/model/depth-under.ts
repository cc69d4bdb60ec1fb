import type { FaceName } from '../finding/face-name.ts'
import type { Solid } from './part.ts'

/** How far it is from a face to the side across from it; from a named edge no farther than the part is large. */
export function depthUnder({ faces }: Pick<Solid, 'faces'>, face: FaceName): number {
  const length = Math.abs(faces.right.pose.origin.x - faces.left.pose.origin.x)
  const width = faces.top.pose.origin.y - faces.bottom.pose.origin.y
  switch (face) {
    case 'front':
    case 'back':
      return faces.front.pose.origin.z - faces.back.pose.origin.z
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
