import { nearestName } from '../../length/nearest-name.ts'
import type { BorePlan, FitPlan, WrittenLength } from '../../plan/plan.ts'
import { bitFor } from '../../workshop/bits.ts'
import { clearance } from '../../workshop/fits.ts'
import type { BoredFor, Depth, Missing } from '../feature.ts'
import type { Size } from '../size.ts'
import type { Context } from './context.ts'
import { isKnown, missingSizes, type Resolved } from './cut-builder.ts'
import { resolveDepth, resolveDistance, resolvePositive } from './resolve-size.ts'

/** How a hole is bored, or what of it the drawing does not give. */
export type Bored =
  | { readonly diameter: Size; readonly depth: Depth; readonly for?: BoredFor }
  | { readonly missing: readonly Missing[] }

/** Nothing where a fault has been reported. */
export function resolveBore(
  context: Context,
  { bore, depth: written }: { readonly bore: BorePlan; readonly depth?: WrittenLength },
): Bored | undefined {
  const depth = resolveDepth(context, written)
  const width =
    bore.kind === 'diameter'
      ? { diameter: resolvePositive(context, bore.diameter, 'the diameter') }
      : diameterForPin(context, bore)
  if (depth === undefined || width === undefined || width.diameter === undefined) return undefined
  const { diameter } = width
  if (isKnown(diameter) && depth !== 'unknown') return { ...width, diameter, depth }
  const lacks = 'lacks' in width && width.lacks !== undefined ? width.lacks : 'diameter'
  return { missing: missingSizes({ [lacks]: diameter, depth }) }
}

type ForPin = { readonly diameter: Resolved; readonly for?: BoredFor; readonly lacks?: string }

/** As wide as the pin and its fit ask for, taken up to a bit of the shop. */
function diameterForPin(
  context: Context,
  { pin: name, fit }: Extract<BorePlan, { kind: 'for-pin' }>,
): ForPin | undefined {
  const pin = context.pins.get(name.value)
  if (pin === undefined) {
    reportUnknownPin(context, name)
    return undefined
  }
  context.noteUse('pin', name.value, name.source)
  const room = pin.diameter === 'unknown' ? 'unknown' : clearanceOf(context, fit, pin.diameter.mm)
  if (room === undefined) return undefined
  if (pin.diameter === 'unknown' || room === 'unknown') {
    const lacks = pin.diameter === 'unknown' ? `diameter of pin ${pin.id}` : 'clearance'
    return { diameter: 'unknown', lacks }
  }
  const wanted = pin.diameter.mm + room.mm
  const diameter: Size = {
    mm: bitFor(context.workshop.bits, wanted, context.unit) ?? wanted,
    basis: pin.diameter.basis === 'scaled' || room.scaled ? 'scaled' : 'derived',
    written: `for ${pin.id}`,
    source: name.source,
  }
  return {
    diameter,
    for: { pin: pin.id, fit: fit.kind === 'named' ? fit.fit.value : 'clearance', wanted },
  }
}

function clearanceOf(
  context: Context,
  fit: FitPlan,
  diameter: number,
): { readonly mm: number; readonly scaled: boolean } | 'unknown' | undefined {
  if (fit.kind === 'named') {
    return { mm: clearance(context.workshop.fits, fit.fit.value, diameter), scaled: false }
  }
  const size = resolveDistance(context, fit.clearance)
  if (!isKnown(size)) return size
  return { mm: size.mm, scaled: size.basis === 'scaled' }
}

export function reportUnknownPin(
  context: Context,
  { value, source }: Extract<BorePlan, { kind: 'for-pin' }>['pin'],
): void {
  const known = [...context.pins.keys()]
  const nearest = nearestName(value, known)
  context.report({
    rule: 'unknown-pin',
    severity: 'error',
    places: [{ source }],
    facts: { found: value, allowed: known.join(', '), ...(nearest === undefined ? {} : { nearest }) },
  })
}
