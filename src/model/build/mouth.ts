import type { Source } from '../../finding/source.ts'
import type { Unit } from '../../length/unit.ts'
import { radians } from '../../number/degrees.ts'
import { coincident } from '../../number/tolerance.ts'
import type { MouthPlan } from '../../plan/plan.ts'
import { mouthDepth } from '../bore/mouth.ts'
import type { Bore, Mouth } from '../feature.ts'
import { angleWithin, isWithin } from './angle-within.ts'
import type { Context } from './context.ts'
import { isKnown, type Resolved } from './cut-builder.ts'
import { resolvePositive } from './resolve-size.ts'

/** The cone of a countersink where the plan is silent. Common practice, no source: that of the screws of the country. */
const usualCone: Readonly<Record<Unit, number>> = { inch: radians(82), mm: radians(90) }

/** Countersinks are sold from 60° to 120°; between these limits a cutter of one's own is still a cone. */
const cones = { above: radians(20), below: radians(160) }

/**
 * From the square to the farther side of a countersink that leans. At 90° that side runs along the face, and the cutter
 * takes a trough without an end.
 */
const closing = { above: 0, below: radians(80) }

/** A mouth, or which of its sizes the drawing does not give; nothing where a fault has been reported. */
export type ResolvedMouth = Mouth | { readonly lacks: Readonly<Record<string, Resolved | number>> }

export function resolveMouth(context: Context, plan: MouthPlan): ResolvedMouth | undefined {
  const { kind } = plan
  const diameter = resolvePositive(context, plan.diameter, `the diameter of the ${kind}`)
  if (plan.kind === 'counterbore') {
    const depth = resolvePositive(context, plan.depth, `the depth of the ${kind}`)
    if (diameter === undefined || depth === undefined) return undefined
    if (isKnown(diameter) && isKnown(depth)) return { kind: plan.kind, diameter, depth }
    return { lacks: { [`diameter of the ${kind}`]: diameter, [`depth of the ${kind}`]: depth } }
  }
  const angle =
    plan.angle === undefined
      ? usualCone[context.unit]
      : angleWithin(context, plan.angle, `the angle of the ${kind}`, cones)
  if (diameter === undefined || angle === undefined) return undefined
  if (isKnown(diameter) && angle !== 'unknown') return { kind: plan.kind, diameter, angle }
  return { lacks: { [`diameter of the ${kind}`]: diameter, [`angle of the ${kind}`]: angle } }
}

/**
 * Whether the mouth of a bore leaves something of the bore, `under` being the wood under the face in millimetres;
 * what is at fault is reported.
 */
export function mouthFits(context: Context, bore: Bore, under: number, source: Source): boolean {
  const { mouth, diameter, depth: deep, lean } = bore
  if (mouth === undefined) return true
  const refuse = (fault: Parameters<Context['report']>[0]): boolean => {
    context.report(fault)
    return false
  }
  const mm = (value: number) => ({ value, unit: 'mm' as const })
  const fault = { severity: 'error', places: [{ source }] } as const
  if (mouth.diameter.mm - diameter.mm <= coincident) {
    const facts = { what: mouth.kind, mouth: mm(mouth.diameter.mm), hole: mm(diameter.mm) }
    return refuse({ rule: 'mouth-too-narrow', ...fault, facts })
  }
  const angle = lean?.angle ?? 0
  const depth = mouthDepth(bore)
  const available = deep === 'through' ? under / Math.cos(angle) : deep.mm
  if (available - depth <= coincident) {
    const of = deep === 'through' ? 'part' : 'hole'
    const facts = { what: mouth.kind, depth: mm(depth), available: mm(available), of }
    return refuse({ rule: 'mouth-too-deep', ...fault, facts })
  }
  if (mouth.kind === 'counterbore') {
    // the floor is square to the axis, so one side of it lies higher than its middle
    const least = (mouth.diameter.mm / 2) * Math.tan(angle)
    if (depth >= least - coincident) return true
    return refuse({ rule: 'mouth-too-shallow', ...fault, facts: { depth: mm(depth), least: mm(least) } })
  }
  const what = 'half the countersink together with the lean'
  return isWithin(context, source, what, mouth.angle / 2 + angle, closing)
}
