import { nearestName } from '../../length/nearest-name.ts'
import type { BoredPlan, BorePlan, FitPlan } from '../../plan/plan.ts'
import { bitFor } from '../../workshop/bits.ts'
import { clearance } from '../../workshop/fits.ts'
import type { Bore, BoredFor, Missing } from '../feature.ts'
import type { Size } from '../size.ts'
import type { Context } from './context.ts'
import { isKnown, missingSizes, type Resolved } from './cut-builder.ts'
import { type ResolvedLean, resolveLeans } from './lean.ts'
import { resolveMouth } from './mouth.ts'
import { resolveDepth, resolveDistance, resolvePositive } from './resolve-size.ts'
import { resolveTip } from './tip.ts'

/** How a hole is bored, or what of it the drawing does not give. */
export type Bored =
  | { readonly bore: Omit<Bore, 'kind' | 'centre' | 'lean'>; readonly leans: readonly ResolvedLean[] }
  | { readonly missing: readonly Missing[] }

/** Nothing where a fault has been reported. Everything is looked at, so that every fault comes out in one run. */
export function resolveBore(context: Context, plan: BoredPlan): Bored | undefined {
  const depth = resolveDepth(context, plan.depth)
  const width = resolveWidth(context, plan.bore)
  const leans = resolveLeans(context, plan.leans)
  const mouth = plan.mouth && resolveMouth(context, plan.mouth)
  const tip = plan.bit && resolveTip(context, plan.bit)
  if (depth === undefined || width?.diameter === undefined || leans === undefined) return undefined
  if ((plan.mouth && !mouth) || (plan.bit && !tip)) return undefined
  const { diameter, for: pin, lacks = 'diameter' } = width
  const unclear = mouth && 'lacks' in mouth ? mouth : undefined
  const missing = missingSizes({
    [lacks]: diameter,
    depth,
    'angle of the lean': leans,
    'angle of the bit': tip,
    ...unclear?.lacks,
  })
  if (!isKnown(diameter) || depth === 'unknown' || leans === 'unknown' || tip === 'unknown' || unclear) {
    return { missing }
  }
  const made = mouth && 'kind' in mouth ? { mouth } : {}
  const bore = { diameter, depth, ...made, ...(tip ? { tip } : {}), ...(pin ? { for: pin } : {}) }
  return { bore, leans }
}

/** How wide; `lacks` names what the drawing does not give, where that is not the diameter itself. */
type Width = { readonly diameter: Resolved; readonly for?: BoredFor; readonly lacks?: string }

function resolveWidth(context: Context, bore: BorePlan): Width | undefined {
  if (bore.kind === 'for-pin') return diameterForPin(context, bore)
  return { diameter: resolvePositive(context, bore.diameter, 'the diameter') }
}

/** As wide as the pin and its fit ask for, taken up to a bit of the shop. */
function diameterForPin(
  context: Context,
  { pin: name, fit }: Extract<BorePlan, { kind: 'for-pin' }>,
): Width | undefined {
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
