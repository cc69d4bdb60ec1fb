import type { Located, WrittenLength } from '../yaml/written.ts'

/** How a pin sits in its hole, or a tongue in its slot. */
export const fitNames = ['turning', 'push', 'easy', 'glue'] as const
export type FitName = (typeof fitNames)[number]

/** One of the shop's fits, or how much wider the hole is than the pin. */
export type FitPlan =
  | { readonly kind: 'named'; readonly fit: Located<FitName> }
  | { readonly kind: 'clearance'; readonly clearance: WrittenLength }
