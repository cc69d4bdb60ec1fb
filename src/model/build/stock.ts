import type { StockPlan, WrittenLength } from '../../plan/plan.ts'
import type { Stock } from '../part.ts'
import type { Size } from '../size.ts'
import type { Context } from './context.ts'
import { isKnown } from './cut-builder.ts'
import { labelFromId } from './label.ts'
import { ofStock } from './part.ts'
import { resolvePositive } from './resolve-size.ts'

/** What is on the rack, as far as the plan gives its sizes. */
export function buildStock(plan: StockPlan, context: Context): Stock {
  const here = ofStock(context, plan)
  const size = (
    name: 'thickness' | 'width' | 'length',
    written: WrittenLength | undefined,
  ): { [N in typeof name]?: Size } => {
    const known = written && resolvePositive(here, written, `the ${name}`)
    return isKnown(known) ? { [name]: known } : {}
  }
  return {
    id: plan.id.value,
    label: plan.label?.value ?? labelFromId(plan.id.value),
    ...size('thickness', plan.thickness),
    ...size('width', plan.width),
    ...size('length', plan.length),
    ...(plan.count ? { count: plan.count.value } : {}),
    ...(plan.wood ? { wood: plan.wood.value } : {}),
    source: plan.id.source,
  }
}
