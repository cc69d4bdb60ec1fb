import { coincident } from '../number/tolerance.ts'
import type { Fits } from './workshop.ts'

/** How a pin sits in its hole. */
export type Fit = 'turning' | 'push' | 'easy' | 'glue'

/** How much wider than a pin of this diameter its hole is, in millimetres. */
export function clearance(fits: Fits, fit: Fit, diameter: number): number {
  if (fit !== 'turning') return fits[fit]
  const { small, large, smallUpTo } = fits.turning
  return diameter <= smallUpTo + coincident ? small : large
}
