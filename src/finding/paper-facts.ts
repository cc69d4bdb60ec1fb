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
  /** A seam between pages that no position keeps off something; `what` says of which things, "2 holes and 1 label". */
  'seam-crosses': { readonly sheet: string; readonly what: string }
  /** Margins that leave nothing of the paper to draw on. */
  'no-room-on-paper': { readonly paper: string }
  /** A length asked for that is none, or lies outside what can be meant, from `least` to the finding's `limit`. */
  'unusable-length': { readonly name: string; readonly found: string; readonly least: Quantity }
  /** Characters that the font lacks and that are printed as their codes. */
  'letters-missing': { readonly codes: string }
  /** A part asked for that the plan does not have. */
  'unknown-part': { readonly found: string; readonly nearest?: string; readonly allowed: string }
  /** A paper asked for that does not exist or cannot be printed on. */
  'unknown-paper': { readonly found: string; readonly nearest?: string; readonly wanted: string }
}
