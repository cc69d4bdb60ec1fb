import { radians } from '../../number/degrees.ts'
import type { BitPlan } from '../../plan/plan.ts'
import type { Tip } from '../feature.ts'
import { angleWithin } from './angle-within.ts'
import type { Context } from './context.ts'

/** Between the cutting edges of a twist drill: bits are ground from 60° for plastic to 150° for hard steel. */
const points = { above: radians(30), below: radians(180) }

/** What the plan says a bit ends in; nothing where a fault has been reported. */
export function resolveTip(
  context: Context,
  { point, angle: written }: BitPlan,
): Tip | 'unknown' | undefined {
  if (written === undefined) return { point: point.value }
  const angle = angleWithin(context, written, 'the angle of the bit', points)
  return typeof angle === 'number' ? { point: point.value, angle } : angle
}
