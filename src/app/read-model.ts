import { check } from '../check/registry.ts'
import type { Finding } from '../finding/finding.ts'
import { buildModel } from '../model/build/model.ts'
import type { Model } from '../model/part.ts'
import { readPlan } from '../plan/read-plan.ts'
import type { PlanText } from './inputs.ts'

/** A plan as far as it could be used. Without a model the findings say why. */
export type ReadModel = {
  readonly title: string | undefined
  readonly model: Model | undefined
  readonly findings: readonly Finding[]
}

/** Reads a plan, works it out and checks it. */
export function readModel({ text, file }: PlanText): ReadModel {
  const { plan, findings: reading } = readPlan(text, file)
  if (plan === undefined) return { title: undefined, model: undefined, findings: reading }
  const { model, findings: building } = buildModel(plan)
  const checking = model === undefined ? [] : check(model)
  return { title: plan.title.value, model, findings: [...reading, ...building, ...checking] }
}
