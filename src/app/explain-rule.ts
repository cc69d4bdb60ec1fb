import { checkRules, explain } from '../check/registry.ts'
import { nearestName } from '../length/nearest-name.ts'
import { bothUnitsText } from '../length/show-length.ts'
import type { Workshop } from '../workshop/workshop.ts'
import { usualStyle } from './read-model.ts'

/** What a rule of the check is for, what its limit is in this shop, and where that comes from. */
export type ExplainedRule = { readonly purpose: string; readonly limit: string; readonly origin: string }

/** Lengths in inches and, beside them, in millimetres: a rule belongs to no plan. */
export function explainRule(
  rule: string,
  workshop: Workshop,
): ExplainedRule | { readonly allowed: readonly string[]; readonly nearest?: string } {
  const explanation = explain(rule)
  if (explanation === undefined) {
    const nearest = nearestName(rule, checkRules)
    return { allowed: checkRules, ...(nearest === undefined ? {} : { nearest }) }
  }
  const show = (mm: number): string => bothUnitsText(mm, usualStyle.inch)
  return {
    purpose: explanation.purpose,
    limit: explanation.limit(workshop, show),
    origin: explanation.origin,
  }
}
