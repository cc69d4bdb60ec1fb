import type { Side } from '../../finding/side.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { faceDirections } from '../../plan/face-directions.ts'
import type { DistancePlan, PositionPlan } from '../../plan/plan.ts'
import { boxPose, type Extent, inward } from '../box-faces.ts'
import type { Missing } from '../feature.ts'
import { onPlane } from '../pose.ts'
import type { Context } from './context.ts'
import { resolveDistance } from './resolve-size.ts'

/** What is to be placed on a face: how far it reaches along and across, in millimetres; nothing for a hole's centre. */
export type Reach = { readonly along: number; readonly across: number }

/**
 * The middle of something on a face, in the face's millimetres. A distance leads to the near side of what is placed.
 * Where the plan gives no distance, or one that the drawing does not give, the direction is listed as missing.
 */
export function place(
  context: Context,
  face: Side,
  extent: Extent,
  position: PositionPlan,
  reach: Reach,
): { at: Point } | { missing: readonly Missing[] } | undefined {
  const along = coordinate(context, position.along, faceDirections[face].along, extent, reach.along)
  const across = coordinate(context, position.across, faceDirections[face].across, extent, reach.across)
  if (along === undefined || across === undefined) return undefined
  const missing = [along, across].flatMap(c => ('missing' in c ? [c.missing] : []))
  if (missing.length > 0) return { missing }
  const at = { x: 0, y: 0, z: 0 }
  for (const c of [along, across]) if ('axis' in c) at[c.axis] = c.value
  return { at: onPlane(boxPose(face, extent), at) }
}

type Coordinate = { axis: 'x' | 'y' | 'z'; value: number } | { missing: Missing }

function coordinate(
  context: Context,
  given: DistancePlan | undefined,
  between: readonly [Side, Side],
  extent: Extent,
  reach: number,
): Coordinate | undefined {
  if (given === undefined) return { missing: { kind: 'distance', between } }
  if (given.kind === 'centre') {
    const [first, second] = between.map(side => inward(side, extent)) as [
      ReturnType<typeof inward>,
      ReturnType<typeof inward>,
    ]
    return { axis: first.axis, value: (first.start + second.start) / 2 }
  }
  const size = resolveDistance(context, given.length)
  if (size === undefined) return undefined
  if (size === 'unknown') return { missing: { kind: 'distance', between } }
  const { axis, start, sign } = inward(given.side, extent)
  return { axis, value: start + sign * (size.mm + reach / 2) }
}
