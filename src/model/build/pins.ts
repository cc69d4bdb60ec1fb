import type { PinPlan, Plan } from '../../plan/plan.ts'
import type { Pin } from '../joint.ts'
import type { Context } from './context.ts'
import { labelFromId } from './label.ts'
import { resolvePositive } from './resolve-size.ts'

/** The pins of a plan; what is wrong with one is reported, and its sizes then count as unknown. */
export function buildPins(plan: Plan, context: Omit<Context, 'pins'>): ReadonlyMap<string, Pin> {
  return new Map(plan.pins.map(pin => [pin.id.value, buildPin(pin, { ...context, pins: new Map() })]))
}

function buildPin(plan: PinPlan, context: Context): Pin {
  const here = { ...context, confirmed: context.confirms(plan.id.value) }
  const length = plan.length && (resolvePositive(here, plan.length, 'the length') ?? 'unknown')
  return {
    id: plan.id.value,
    label: plan.label?.value ?? labelFromId(plan.id.value),
    ...(plan.note ? { note: plan.note.value } : {}),
    ...(plan.page ? { page: plan.page.value } : {}),
    diameter: resolvePositive(here, plan.diameter, 'the diameter') ?? 'unknown',
    ...(length ? { length } : {}),
    ...(plan.count ? { count: plan.count.value } : {}),
    ...(plan.wood ? { wood: plan.wood.value } : {}),
    source: plan.id.source,
  }
}
