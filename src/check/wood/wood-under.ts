import { clipPaths } from '../../geometry/cut/clip-path.ts'
import { boundsOfRegions } from '../../geometry/measure/bounds.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { line } from '../../geometry/shape/segment.ts'
import { toPart } from '../../model/pose.ts'
import type { Plane } from '../subject/plane.ts'
import type { PartAtHand } from '../subject/subject.ts'

/**
 * How far it is from a place on a face straight into the part until the wood ends: through the thickness, or across
 * the front as it is when the notches are cut. From a face that lies outside the outline the air counts too.
 */
export function woodUnder({ part, planes }: PartAtHand, { face }: Pick<Plane, 'face'>, at: Point): number {
  if (face.id === 'front' || face.id === 'back') return part.thickness.mm
  const front = planes[0]?.wood ?? []
  const start = toPart(face.pose, at)
  const { out } = face.pose
  const { left, right, bottom, top } = boundsOfRegions(front)
  const across = right - left + top - bottom
  const end = { x: start.x - out.x * across, y: start.y - out.y * across }
  const [clipped] = clipPaths([{ segments: [line({ x: start.x, y: start.y }, end)], closed: false }], front)
  const wood = clipped?.inside[0]?.segments.at(-1)?.to
  return wood === undefined ? 0 : Math.hypot(wood.x - start.x, wood.y - start.y)
}
