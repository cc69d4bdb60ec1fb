import type { WrittenLength } from '../yaml/written.ts'

export const cornerNames = ['bottom-left', 'bottom-right', 'top-right', 'top-left'] as const
export type CornerName = (typeof cornerNames)[number]

/** A corner that is not square: `1/4` or `{ round: 1/4 }`, or `{ chamfer: 1/8 }` measured along both edges. */
export type CornerPlan = { readonly kind: 'round' | 'chamfer'; readonly length: WrittenLength }

/** The corners that are not square. One value for all stands at each of the four. */
export type CornersPlan = { readonly [C in CornerName]?: CornerPlan }
