import type { Quantity } from './quantity.ts'

/** What can be wrong between the drawings and the paper. */
export type PaperFacts = {
  /** A sheet that is larger than the page's free space, whichever way the paper is turned. */
  'does-not-fit': {
    readonly sheet: string
    readonly paper: string
    readonly width: Quantity
    readonly height: Quantity
    readonly freeWidth: Quantity
    readonly freeHeight: Quantity
  }
  /** Characters that the font lacks and that are printed as their codes. */
  'letters-missing': { readonly codes: string }
  /** A part asked for that the plan does not have. */
  'unknown-part': { readonly found: string; readonly nearest?: string; readonly allowed: string }
  /** A paper asked for that does not exist or cannot be printed on. */
  'unknown-paper': { readonly found: string; readonly nearest?: string; readonly wanted: string }
  /** Something of a part that half the kerf, moved into the waste, makes vanish or close up; the kerf is the `limit`. */
  'narrower-than-kerf': { readonly what: string }
  /** A sheet whose lines could not be moved by half the kerf; that is the finding's `limit`. */
  'kerf-not-compensated': { readonly sheet: string }
}
