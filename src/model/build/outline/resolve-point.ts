import type { Point } from '../../../geometry/shape/point.ts'
import type { DistancePlan, OutlinePoint } from '../../../plan/plan.ts'
import type { Context } from '../context.ts'
import { resolveDistance } from '../resolve-size.ts'

/** Length and width of the box that points may be measured from; none where the outline itself says its size. */
export type Box = { readonly length: number; readonly width: number } | undefined

/** A point in millimetres from the left and the bottom; nothing where a fault has been reported. */
export function resolvePoint(context: Context, point: OutlinePoint, box: Box): Point | 'unknown' | undefined {
  const x = coordinate(context, point.along, box?.length)
  const y = coordinate(context, point.across, box?.width)
  if (x === undefined || y === undefined) return undefined
  return x === 'unknown' || y === 'unknown' ? 'unknown' : { x, y }
}

function coordinate(
  context: Context,
  given: DistancePlan,
  whole: number | undefined,
): number | 'unknown' | undefined {
  const far = given.kind === 'from-side' && (given.side === 'right' || given.side === 'top')
  if (whole === undefined && (far || given.kind === 'centre')) {
    context.report({
      rule: 'outline-needs-size',
      severity: 'error',
      places: [{ source: given.kind === 'centre' ? given.source : given.length.source }],
      facts: { side: given.kind === 'centre' ? 'center' : given.side },
    })
    return undefined
  }
  if (given.kind === 'centre') return whole! / 2
  const size = resolveDistance(context, given.length)
  if (size === undefined || size === 'unknown') return size
  return far ? whole! - size.mm : size.mm
}
