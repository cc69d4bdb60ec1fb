import type { Model } from '../model/part.ts'
import type { Workshop } from '../workshop/workshop.ts'
import type { PlanText } from './inputs.ts'
import { type ReadModel, readModel } from './read-model.ts'
import { readShop } from './read-shop.ts'

/** What is to be made, and where: there is either all of it, or neither and the findings say why. */
export type ReadJob = ReadModel & {
  readonly job?: { readonly model: Model; readonly workshop: Workshop }
}

/** Reads a plan, and the shop that it is made in; a plan for a shop that cannot be read is not looked at. */
export function readJob(plan: PlanText, shop: PlanText | undefined): ReadJob {
  const { workshop, findings, texts, style } = readShop(shop)
  if (workshop === undefined) return { findings, texts, style }
  const read = readModel(plan, workshop)
  return {
    ...read,
    findings: [...findings, ...read.findings],
    texts: new Map([...texts, ...read.texts]),
    ...(read.model === undefined ? {} : { job: { model: read.model, workshop } }),
  }
}
