import { evaluate, evaluateAngle } from '../../length/evaluate.ts'
import type { LengthStyle } from '../../length/precision.ts'
import type { Scope } from '../../length/scope.ts'
import { angleText } from '../../length/show-angle.ts'
import { showLength } from '../../length/show-length.ts'
import type { WrittenAngle, WrittenLength } from '../../plan/plan.ts'
import { open, type Value } from '../../sheet/cards/card.ts'

/** What it takes to say what a size of a plan comes to. */
export type Knowing = {
  readonly scope: Scope
  readonly style: LengthStyle
  /** Whether what was scaled here has been confirmed since. */
  readonly confirmed: boolean
}

/** What the plan says of a size, as a card shows it: open where it says nothing. */
export function cardValue(written: WrittenLength | undefined, { scope, style, confirmed }: Knowing): Value {
  if (written === undefined) return open
  const { size } = written
  const calculated = evaluate(size, scope, style.unit)
  // a formula that cannot be worked out is a finding elsewhere; here it stands as it was written
  if (!calculated.ok) return { kind: 'given', words: [size.written] }
  if (calculated.value.kind === 'unknown') return { kind: 'not-given' }
  const { mm, basis } = calculated.value
  return {
    kind: basis === 'scaled' && !confirmed ? 'measured' : 'given',
    words: showLength(mm, style),
  }
}

/** The same of an angle. */
export function angleValue({ size }: WrittenAngle, { scope, style, confirmed }: Knowing): Value {
  const calculated = evaluateAngle(size, scope, style.unit)
  if (!calculated.ok) return { kind: 'given', words: [size.written] }
  if (calculated.value.kind === 'unknown') return { kind: 'not-given' }
  const { radians, basis } = calculated.value
  return { kind: basis === 'scaled' && !confirmed ? 'measured' : 'given', words: [angleText(radians)] }
}
