import { type Body, hullOfBodies, hullOfPoints } from '../../geometry/solid/body.ts'
import { overlapOf, type Pair } from '../../geometry/solid/overlap.ts'
import type { Point3 } from '../../geometry/solid/point3.ts'
import { apart } from '../../geometry/solid/separation.ts'
import type { Bored, BoredPiece } from '../../model/inside/bored.ts'
import type { Hollow } from '../../model/inside/hollow.ts'
import { coincident } from '../../number/tolerance.ts'
import { isBored } from './is-bored.ts'

/** How far a hole has to move to be clear of a cut that it meets, in millimetres. It moves as a whole, its point with it. */
export function depthOfMeeting(first: Bored, second: Bored | Hollow): number {
  const others = bodiesOf(second)
  const meeting = bodiesOf(first).flatMap(body =>
    others.map((other): Pair => [body, other]).filter(([a, b]) => meet(a, b)),
  )
  return meeting.length === 0 ? 0 : overlapOf(meeting, [first.axis.into, wayOf(second)]).by
}

/**
 * The convex bodies of a cut, none of which goes clear while one that it is bored with does not: the mouth; the full
 * width, all of it; and the point with what was bored before it came there, which a narrow spur does not fill.
 */
function bodiesOf(cut: Bored | Hollow): readonly Body[] {
  if (!isBored(cut)) return [cut.body]
  const of = (kind: BoredPiece['of']) => cut.inWood.filter(piece => piece.of === kind).map(({ body }) => body)
  const sides = of('side')
  const start = hullOfPoints([cut.axis.from])
  return [
    ...of('mouth'),
    ...(sides.length === 0 ? [] : [hullOfBodies(sides)]),
    ...of('tip').map(tip => hullOfBodies([start, tip])),
  ]
}

function meet(a: Body, b: Body): boolean {
  return apart(a, b, { maxDeviation: coincident, reach: coincident }) !== undefined
}

function wayOf(cut: Bored | Hollow): Point3 {
  return isBored(cut) ? cut.axis.into : cut.face.pose.out
}
