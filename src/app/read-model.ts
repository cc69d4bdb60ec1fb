import { check } from '../check/registry.ts'
import type { LengthStyle } from '../length/precision.ts'
import { millimetresPerInch } from '../length/unit.ts'
import { buildModel } from '../model/build/model.ts'
import type { Model } from '../model/part.ts'
import { readPlan } from '../plan/read-plan.ts'
import { defaultWorkshop } from '../workshop/defaults.ts'
import type { Workshop } from '../workshop/workshop.ts'
import type { Found } from './found.ts'
import type { PlanText } from './inputs.ts'

/** A plan as far as it could be used. Without a model the findings say why. */
export type ReadModel = Found & { readonly title?: string; readonly model?: Model }

/** Reads a plan, works it out and checks it for a shop. */
export function readModel({ text: input, file }: PlanText, workshop: Workshop = defaultWorkshop): ReadModel {
  const { plan, findings: reading, text } = readPlan(input, file)
  const texts = new Map([[file, text]])
  if (plan === undefined) return { findings: reading, texts, style: usualStyle.inch }
  const { model, findings: building } = buildModel(plan, workshop)
  const title = plan.title.value
  if (model === undefined)
    return { title, findings: [...reading, ...building], texts, style: usualStyle[plan.units] }
  return {
    title,
    model,
    findings: [...reading, ...building, ...check(model, workshop)],
    texts,
    style: { unit: model.units, precision: model.precision },
  }
}

/** How lengths are shown where the plan did not get as far as saying it. */
export const usualStyle: Readonly<Record<LengthStyle['unit'], LengthStyle>> = {
  inch: { unit: 'inch', precision: millimetresPerInch / 64 },
  mm: { unit: 'mm', precision: 0.1 },
}
