import type { Quantity } from './quantity.ts'

/** What can be wrong between the drawings and the paper. */
export type PaperFacts = {
  /** A sheet that is larger than the page's free space, whichever way the paper is turned. */
  'does-not-fit': {
    readonly sheet: string
    /** The part, and the pieces of it that the sheet is for: "hatch (1 piece)". */
    readonly of: string
    /** What becomes of the words and tables that belong to it. */
    readonly words: 'printed' | 'left out'
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
  /** A length read off a scale sheet that is none; `what` is the reading: "across". */
  'reading-not-a-length': { readonly what: string; readonly found: string }
  /** Bars that no scale sheet has: not two whole tens of millimetres. */
  'unknown-bars': { readonly found: string }
  /** The readings across and along were given one for the other. */
  'readings-swapped': Readonly<Record<string, never>>
  /** A printer that is too far off to correct: what the bars measure, and what they are. `page` and `sheet` where "fit to page" explains it. */
  'printer-too-far-off': {
    readonly across: Quantity
    readonly along: Quantity
    readonly barAcross: Quantity
    readonly barAlong: Quantity
    readonly page?: string
    readonly sheet?: string
  }
  /** A printer that leans more than can be corrected, in degrees. */
  'printer-leans': { readonly lean: Quantity }
  /** Diagonals that do not belong to a square whose sides are as the bars say. */
  'diagonals-disagree': { readonly first: Quantity; readonly second: Quantity }
  /** A name that no printer can be kept under. */
  'unusable-printer-name': { readonly found: string }
  /** A printer asked for that was never measured. */
  'unknown-printer': { readonly found: string; readonly nearest?: string; readonly allowed: string }
  /** The file of the printers that were measured is not as it was written. */
  'printers-unreadable': Readonly<Record<string, never>>
  /** Characters that the font lacks and that are printed as their codes. */
  'letters-missing': { readonly codes: string }
  /** A part asked for that the plan does not have. */
  'unknown-part': { readonly found: string; readonly nearest?: string; readonly allowed: string }
  /** What should name a row of a part, and does not. */
  'unusable-reference': { readonly found: string; readonly example: string; readonly nearest?: string }
  /** A cut of which there is no drill strip; `why` is the end of a sentence: "it is not bored". */
  'no-strip': { readonly found: string; readonly why: string }
  /** A kind of sheet asked for that there is not. */
  'unknown-sheet': { readonly found: string; readonly nearest?: string; readonly allowed: string }
  /** A paper asked for that does not exist or cannot be printed on. */
  'unknown-paper': { readonly found: string; readonly nearest?: string; readonly wanted: string }
  /** Something of a part that half the kerf, moved into the waste, makes vanish or close up; the kerf is the `limit`. */
  'narrower-than-kerf': { readonly what: string }
  /** A sheet whose lines could not be moved by half the kerf; that is the finding's `limit`. */
  'kerf-not-compensated': { readonly sheet: string }
}
