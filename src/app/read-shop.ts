import { defaultWorkshop } from '../workshop/defaults.ts'
import { readWorkshop } from '../workshop/read-workshop.ts'
import type { Workshop } from '../workshop/workshop.ts'
import type { Found } from './found.ts'
import type { PlanText } from './inputs.ts'
import { usualStyle } from './read-model.ts'

/** A workshop with what was found in its file. Without a workshop the findings say why. */
export type ReadShop = Found & {
  readonly workshop?: Workshop
}

/** The shop that a file describes; where there is none, the usual one. */
export function readShop(shop: PlanText | undefined): ReadShop {
  const style = usualStyle.inch
  if (shop === undefined) return { workshop: defaultWorkshop, findings: [], texts: new Map(), style }
  const { workshop, findings, text } = readWorkshop(shop.text, shop.file)
  return {
    ...(workshop === undefined ? {} : { workshop }),
    findings,
    texts: new Map([[shop.file, text]]),
    style,
  }
}
