import type { Printer } from '../paper/printer/printer.ts'
import type { Copies } from '../sheet/sheet.ts'
import type { Weight } from '../text/fonts.ts'

/** A text as it was read, and the name under which messages speak of it. */
export type PlanText = { readonly text: string | Uint8Array; readonly file: string }

/** The bytes of the font files of each weight, the one that sets the measures first. */
export type FontBytes = Readonly<Record<Weight, readonly Uint8Array[]>>

/** What the whole job hangs on besides the plan; the version, and the date if there is one, stand in the files that are made. */
export type Surroundings = { readonly fonts: FontBytes; readonly version: string; readonly date?: Date }

/** What is wanted of a packet. */
export type Choices = {
  /** A paper by its name, or width x height; without it Letter for a plan in inches, A4 for one in millimetres. */
  readonly paper?: string
  /** The ids of the parts to print, all of them unless given. */
  readonly parts?: readonly string[]
  /** The kinds of sheet to print, the cover among them; all of them unless given. */
  readonly sheets?: readonly string[]
  /** One template for each piece, unless one for all pieces of a hand is asked for. */
  readonly copies?: Copies
  /** The edge that the printer cannot reach, as a length, the same on all four sides. */
  readonly margin?: string
  /** What two pages of one large drawing share, as a length; 10 mm unless given. */
  readonly overlap?: string
  /** The printer to correct for. */
  readonly printer?: Printer
}

/** A file to be written: its name within the folder asked for, and what is in it. */
export type NamedBytes = { readonly name: string; readonly bytes: Uint8Array }
