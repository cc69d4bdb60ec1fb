import type { Source } from '../../finding/source.ts'
import { degrees } from '../../number/degrees.ts'
import type { WrittenAngle } from '../../plan/plan.ts'
import type { Context } from './context.ts'
import { resolveAngle } from './resolve-size.ts'

/** What an angle may be, both ends excluded, in radians. */
export type AngleLimits = { readonly above: number; readonly below: number }

/** An angle that has to lie within limits. `what` names it for the maker: "the lean". */
export function angleWithin(
  context: Context,
  written: WrittenAngle,
  what: string,
  limits: AngleLimits,
): number | 'unknown' | undefined {
  const angle = resolveAngle(context, written)
  if (typeof angle !== 'number') return angle
  return isWithin(context, written.source, what, angle, limits) ? angle : undefined
}

/** Whether an angle that was worked out lies within limits; reported where it does not. */
export function isWithin(
  { report }: Context,
  source: Source,
  what: string,
  angle: number,
  { above, below }: AngleLimits,
): boolean {
  if (angle > above && angle < below) return true
  const quantity = (radians: number) => ({ value: degrees(radians), unit: 'degree' as const })
  report({
    rule: 'angle-out-of-range',
    severity: 'error',
    places: [{ source }],
    facts: { what, angle: quantity(angle), above: quantity(above), below: quantity(below) },
  })
  return false
}
