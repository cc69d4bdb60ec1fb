import type { DistanceFrom } from '../../finding/face-name.ts'
import type { Source } from '../../finding/source.ts'
import { radians } from '../../number/degrees.ts'
import type { LeanPlan } from '../../plan/plan.ts'
import { type GivenLean, resultantLean } from '../bore/lean.ts'
import type { Lean } from '../feature.ts'
import { angleWithin, isWithin } from './angle-within.ts'
import type { Context } from './context.ts'
import type { FaceFrame } from './face-frame.ts'

/** A lean that is known, on whatever face. */
export type ResolvedLean = { readonly toward: DistanceFrom; readonly angle: number; readonly source: Source }

/** Beyond this no table tilts and no bit bites: it slides down the wood. Common practice, no source. */
const gentle = { above: 0, below: radians(60) }

/** The leans of a hole; `unknown` where the drawing does not give one of the angles, nothing where a fault has been reported. */
export function resolveLeans(
  context: Context,
  plans: readonly LeanPlan[],
): readonly ResolvedLean[] | 'unknown' | undefined {
  const two = plans.length > 1
  const leans = plans.map(({ toward, angle: written }) => {
    const what = two ? `the lean toward ${toward.value}` : 'the lean'
    const angle = angleWithin(context, written, what, gentle)
    return typeof angle === 'number' ? { toward: toward.value, angle, source: written.source } : angle
  })
  if (leans.some(lean => lean === undefined)) return undefined
  if (leans.some(lean => lean === 'unknown')) return 'unknown'
  const known = leans.filter(lean => typeof lean === 'object')
  if (!two) return known
  const both = Math.atan(Math.hypot(...known.map(({ angle }) => Math.tan(angle))))
  const what = 'the resultant of the two leans'
  return isWithin(context, plans[1]!.source, what, both, gentle) ? known : undefined
}

/** The lean as it is seen on a face. */
export function leanOn(frame: FaceFrame, leans: readonly ResolvedLean[]): Lean | undefined {
  const [first, ...others] = leans.map(({ toward, angle }): GivenLean => {
    const { axis, sign } = frame.ruler(toward)
    // the ruler leads away from the side
    return { toward, angle, direction: { x: 0, y: 0, [axis]: -sign } }
  })
  return first && resultantLean([first, ...others])
}
