import type { StockPlan, WrittenLength } from '../../plan/plan.ts'
import type { Stock } from '../part.ts'
import type { Context } from './context.ts'
import { isKnown, type Resolved } from './cut-builder.ts'
import { resolvePositive } from './resolve-size.ts'

/** A kind of stock with its sizes worked out; one that is at fault has been reported. */
export type ResolvedStock = Omit<Stock, 'thickness' | 'width' | 'length'> & {
  readonly thickness: Resolved
  readonly width: Resolved
  readonly length: Resolved
}

/** Works out the sizes of the rack once, those that no part asks for too, so that each fault is said once. */
export function buildStock(plan: StockPlan, context: Context): ResolvedStock {
  const here = { ...context, confirmed: context.confirms(plan.id.value) }
  const size = (written: WrittenLength | undefined, what: string) =>
    written && resolvePositive(here, written, what)
  return {
    id: plan.id.value,
    label: plan.label?.value ?? plan.id.value,
    thickness: resolvePositive(here, plan.thickness, 'the thickness'),
    width: size(plan.width, 'the width'),
    length: size(plan.length, 'the length'),
    ...(plan.count ? { count: plan.count.value } : {}),
    ...(plan.wood ? { wood: plan.wood.value } : {}),
    source: plan.id.source,
  }
}

/** The same, without the sizes that the drawing does not give. */
export function onRack({ thickness, width, length, ...stock }: ResolvedStock): Stock {
  return {
    ...stock,
    ...(isKnown(thickness) ? { thickness } : {}),
    ...(isKnown(width) ? { width } : {}),
    ...(isKnown(length) ? { length } : {}),
  }
}
