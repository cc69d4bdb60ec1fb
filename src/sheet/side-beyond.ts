import { type Side, sides } from '../finding/side.ts'
import { dot } from '../geometry/solid/point3.ts'
import type { Solid } from '../model/part.ts'
import type { Pose } from '../model/pose.ts'
import { coincident } from '../number/tolerance.ts'

/** The side of a part that lies beyond a border of a face, in a direction of the face's own; none where that lies askew. */
export function sideBeyond(
  { faces }: Pick<Solid, 'faces'>,
  { right, up }: Pose,
  x: number,
  y: number,
): Side | undefined {
  return sides.find(side => {
    const { out } = faces[side].pose
    return dot(out, right) * x + dot(out, up) * y > 1 - coincident
  })
}
