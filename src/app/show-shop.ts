import type { Unit } from '../length/unit.ts'
import { writeWorkshop } from '../workshop/write-workshop.ts'
import type { Found } from './found.ts'
import type { PlanText } from './inputs.ts'
import { usualStyle } from './read-model.ts'
import { readShop } from './read-shop.ts'

/** A shop as a workshop file, every figure of it with a remark; without it the findings say why. */
export type ShownShop = Found & { readonly text?: string }

/** The usual shop, or what a file makes of it, written out in a unit. */
export function showShop(shop: PlanText | undefined, unit: Unit): ShownShop {
  const { workshop, findings, texts } = readShop(shop)
  const found = { findings, texts, style: usualStyle[unit] }
  return workshop === undefined ? found : { ...found, text: writeWorkshop(workshop, unit) }
}
