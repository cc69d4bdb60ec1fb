import type { StockPlan } from '../../plan/plan.ts'
import type { Context } from './context.ts'
import type { Resolved } from './cut-builder.ts'
import { resolvePositive } from './resolve-size.ts'

/** A kind of stock as parts need it; a thickness that is at fault has been reported. */
export type Stock = {
  readonly id: string
  readonly label: string
  readonly wood?: string
  readonly thickness: Resolved
}

/** Works out the sizes of the rack once, those that no part asks for too, so that each fault is said once. */
export function buildStock(context: Context, { id, label, wood, ...sizes }: StockPlan): Stock {
  const thickness = resolvePositive(context, sizes.thickness, 'the thickness')
  if (sizes.width !== undefined) resolvePositive(context, sizes.width, 'the width')
  if (sizes.length !== undefined) resolvePositive(context, sizes.length, 'the length')
  return {
    id: id.value,
    label: label?.value ?? id.value,
    ...(wood === undefined ? {} : { wood: wood.value }),
    thickness,
  }
}
