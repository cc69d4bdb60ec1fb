import type { Side } from '../../finding/side.ts'
import type { Face } from '../../model/part.ts'
import type { Point3 } from '../../model/pose.ts'

/**
 * What the maker calls an edge of a face: the top edge of the left end, as it is seen, is the part's top, and its
 * right edge the part's front. On the front every edge has its own name; a named edge of an outline runs from its
 * start to its end.
 */
export function edgeName({ id, pose }: Face, tag: string | undefined): string {
  if (tag === undefined) return 'edge'
  if (id === 'front') return tag
  const { right, up } = pose
  switch (tag) {
    case 'right':
      return sideToward(right) ?? 'end of the edge'
    case 'left':
      return sideToward(opposite(right)) ?? 'end of the edge'
    case 'top':
      return sideToward(up) ?? tag
    case 'bottom':
      return sideToward(opposite(up)) ?? tag
    default:
      return tag
  }
}

/** The side that one meets in a direction along one of the part's axes; none in a slanting one. */
function sideToward({ x, y, z }: Point3): Side | undefined {
  if (x === 1) return 'right'
  if (x === -1) return 'left'
  if (y === 1) return 'top'
  if (y === -1) return 'bottom'
  if (z === 1) return 'front'
  return z === -1 ? 'back' : undefined
}

function opposite({ x, y, z }: Point3): Point3 {
  return { x: -x, y: -y, z: -z }
}
