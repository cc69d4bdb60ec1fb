import type { DistanceFrom } from '../../finding/face-name.ts'
import type { Vector } from '../../geometry/shape/point.ts'
import type { Lean } from '../feature.ts'

/** One lean as the plan gives it: toward a side of the face, whose direction on it is a unit vector. */
export type GivenLean = { readonly toward: DistanceFrom; readonly direction: Vector; readonly angle: number }

/**
 * What one or two leans come to. Each angle is the one seen when the rod is looked at square to its direction, as
 * rake is seen from one side and splay from the other, so a rod that rises by 1 moves by tan(angle) in each.
 *
 *      tan² resultant = tan² a + tan² b,   direction of the sight line = atan2(tan b, tan a)
 *
 * Source: the components of one vector, by definition; the same as compound angles of legs are worked out from rake
 * and splay.
 */
export function resultantLean(given: readonly [GivenLean, ...GivenLean[]]): Lean {
  const [first, ...others] = given
  const written = given.map(({ toward, angle }) => ({ toward, angle }))
  const direction = ({ x, y }: Vector): number => Math.atan2(y, x)
  if (others.length === 0) return { toward: direction(first.direction), angle: first.angle, given: written }
  let x = 0
  let y = 0
  for (const { direction, angle } of given) {
    x += direction.x * Math.tan(angle)
    y += direction.y * Math.tan(angle)
  }
  return { toward: direction({ x, y }), angle: Math.atan(Math.hypot(x, y)), given: written }
}

/**
 * How far the table of a drill press is tilted for a bore, in radians from level: its whole lean, with the sight line
 * square to the hinge of the table, so that the table tilts along it.
 */
export function tableTilt({ lean }: { readonly lean?: Lean }): number {
  return lean?.angle ?? 0
}

/**
 * The sight line in the plan's words: the direction of the first lean, turned by `angle` (radians, 0 to a quarter
 * turn) to that of the second where there are two. "31° from right to top" is 31, right, top.
 */
export type SightLine = {
  readonly from: DistanceFrom
  readonly to?: DistanceFrom
  readonly angle: number
}

export function sightLine({ given: [first, second] }: Lean): SightLine {
  if (first === undefined) throw new RangeError('a lean is given by one angle at least')
  if (second === undefined) return { from: first.toward, angle: 0 }
  const angle = Math.atan2(Math.tan(second.angle), Math.tan(first.angle))
  return { from: first.toward, to: second.toward, angle }
}
