import type { Finding } from '../../finding/finding.ts'
import type { Plan } from '../../plan/plan.ts'
import type { Model, Part, Undrawn } from '../part.ts'
import { tooManyFeatures } from './count-features.ts'
import { buildPart } from './part.ts'
import { resolvePositive } from './resolve-size.ts'
import { planScope } from './scope.ts'
import { buildStock } from './stock.ts'

/**
 * Works out every value of a plan. There is no model where a value cannot be worked out: then every fault is
 * reported, with its place. What the drawing merely leaves out is no fault; it is carried along in the model.
 */
export function buildModel(plan: Plan): { readonly model?: Model; readonly findings: readonly Finding[] } {
  const tooMany = tooManyFeatures(plan.parts)
  if (tooMany !== undefined) return { findings: [tooMany] }
  const findings: Finding[] = []
  const report = (finding: Finding): void => {
    findings.push(finding)
  }
  const context = planScope(plan, report)
  const precision = resolvePositive(context, plan.precision, 'the precision')
  const stock = plan.stock.map(kind => buildStock(context, kind))
  const built = plan.parts.map(part =>
    buildPart(part, { ...context, report: finding => report(inPart(finding, part.id.value)) }, stock),
  )
  if (findings.length > 0) return { findings }
  return {
    model: {
      title: plan.title.value,
      file: plan.file,
      units: plan.units,
      precision: precision === undefined || precision === 'unknown' ? finestStep[plan.units] : precision.mm,
      parts: built.filter((p): p is Part => p !== undefined && 'drawn' in p),
      undrawn: built.filter((p): p is Undrawn => p !== undefined && !('drawn' in p)),
    },
    findings,
  }
}

/** What sizes are shown to where the plan says that its own precision is unknown. */
const finestStep = { inch: 25.4 / 64, mm: 0.1 } as const

/** A fault found inside a part says so in each of its places. */
function inPart<F extends Finding>(finding: F, part: string): F {
  return { ...finding, places: finding.places.map(place => ({ part, ...place })) }
}
