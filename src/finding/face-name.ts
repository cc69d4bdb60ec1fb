import { type Side, sides } from './side.ts'

/** A face of a part: one of its six sides, or a straight edge of its outline that has a name. */
export type FaceName = Side | `edge:${string}`

/** What a distance on a face is taken from: a side, or one of the ends of a named edge. */
export type DistanceFrom = Side | 'start' | 'end'

export function isSide(face: string): face is Side {
  return sides.some(side => side === face)
}

/** A face as the maker says it: the side, or the name of the edge. */
export function sayFace(face: FaceName): string {
  return isSide(face) ? face : face.slice('edge:'.length)
}
