import type { Finding } from '../../finding/finding.ts'
import { usablePrecision } from '../../length/precision.ts'
import type { Plan } from '../../plan/plan.ts'
import { defaultWorkshop } from '../../workshop/defaults.ts'
import type { Workshop } from '../../workshop/workshop.ts'
import type { Model, Part, Undrawn } from '../part.ts'
import type { Context } from './context.ts'
import { tooManyFeatures } from './count-features.ts'
import { buildJoints } from './joints.ts'
import { reportUnknownConfirmed, takeNotes } from './notes.ts'
import { buildPart } from './part.ts'
import { buildPins } from './pins.ts'
import { placedIn } from './placed-in.ts'
import { resolvePositive } from './resolve-size.ts'
import { planScope } from './scope.ts'
import { buildStock, onRack } from './stock.ts'

/**
 * Works out every value of a plan. There is no model where a value cannot be worked out: then every fault is
 * reported, with its place. What the drawing merely leaves out is no fault; it is carried along in the model.
 */
export function buildModel(
  plan: Plan,
  workshop: Workshop = defaultWorkshop,
): { readonly model?: Model; readonly findings: readonly Finding[] } {
  const tooMany = tooManyFeatures(plan.parts)
  if (tooMany !== undefined) return { findings: [tooMany] }
  const { notes, findings, scaled, names } = takeNotes(plan)
  const scope = planScope(plan, notes)
  const unpinned = { ...notes, unit: plan.units, workshop, scope, place: {}, confirmed: false }
  const context: Context = { ...unpinned, pins: buildPins(plan, unpinned) }
  const precision = buildPrecision(plan, context)
  const stock = plan.stock.map(s => buildStock(s, context))
  const parts = new Map<string, Part | Undrawn>()
  for (const part of plan.parts) {
    const transfer = plan.transfer?.value ?? 'auto'
    const built = buildPart(part, inPart(context, part.id.value), stock, transfer)
    if (built !== undefined) parts.set(part.id.value, built)
  }
  reportUnknownConfirmed(plan, context.report)
  const joints = buildJoints(plan, parts, context)
  if (findings.length > 0 || precision === undefined) return { findings }
  return {
    model: {
      title: plan.title.value,
      file: plan.file,
      units: plan.units,
      precision,
      projection: plan.projection?.value ?? 'third',
      stock: stock.map(onRack),
      pins: [...context.pins.values()],
      parts: [...parts.values()].filter((p): p is Part => 'drawn' in p),
      undrawn: [...parts.values()].filter((p): p is Undrawn => !('drawn' in p)),
      joints,
      names: names(),
      scaled,
    },
    findings,
  }
}

/** What sizes are shown to where the plan says that its own precision is unknown. */
const finestStep = { inch: 25.4 / 64, mm: 0.1 } as const

/** The steps that sizes are shown in, in millimetres. */
function buildPrecision(plan: Plan, context: Context): number | undefined {
  const { size, source } = plan.precision
  const precision = resolvePositive(context, plan.precision, 'the precision')
  if (precision === undefined) return undefined
  if (precision === 'unknown') return finestStep[plan.units]
  const usable = usablePrecision({ unit: plan.units, precision: precision.mm }, size.written)
  if (usable.ok) return usable.value.precision
  const { found, wanted } = usable.fault
  context.report({
    rule: 'precision-unusable',
    severity: 'error',
    places: [{ source }],
    facts: { found, wanted },
  })
  return undefined
}

function inPart(context: Context, part: string): Context {
  return {
    ...context,
    place: { part },
    confirmed: context.confirms(part),
    report: finding => context.report(placedIn(finding, { part })),
  }
}
