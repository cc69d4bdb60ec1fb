import type { Printer } from '../paper/printer/printer.ts'
import type { Pack } from '../render/pdf/pack-content.ts'
import type { Lines } from '../render/svg/options.ts'
import type { Copies } from '../sheet/sheet.ts'
import type { Weight } from '../text/fonts.ts'

/** A text as it was read, and the name under which messages speak of it. */
export type PlanText = { readonly text: string | Uint8Array; readonly file: string }

/** The bytes of the font files of each weight, the one that sets the measures first. */
export type FontBytes = Readonly<Record<Weight, readonly Uint8Array[]>>

/** What the whole job hangs on besides the plan; the version, and the date if there is one, stand in the files that are made. */
export type Surroundings = {
  readonly fonts: FontBytes
  readonly version: string
  readonly date?: Date
  /** Told of every page before it is written, for who waits for it. */
  readonly progress?: Progress
  /** Packs bytes with zlib beside the other work, where that can be done; the files are no different without it. */
  readonly pack?: Pack
}

/** A page by its number, counted from 1, of so many. */
export type Progress = (page: number, count: number) => void

/** What is wanted of a packet, and the shop that it is for. */
export type Choices = {
  /** A paper by its name, or width x height; without it Letter for a plan in inches, A4 for one in millimetres. */
  readonly paper?: string
  /** The ids of the parts to print, all of them unless given. */
  readonly parts?: readonly string[]
  /** The maker's own shop, the usual one unless given. */
  readonly shop?: PlanText
  /** The kinds of sheet to print, the cover among them; all of them unless given. */
  readonly sheets?: readonly string[]
  /** `PART.ROW`: the drill strips for that row or hole and nothing else, whatever parts and sheets are asked for. */
  readonly strip?: string
  /** One template for each piece, unless one for all pieces of a hand is asked for. */
  readonly copies?: Copies
  /** The edge that the printer cannot reach, as a length, the same on all four sides. */
  readonly margin?: string
  /** What two pages of one large drawing share, as a length; 10 mm unless given. */
  readonly overlap?: string
  /** The printer to correct for. */
  readonly printer?: Printer
}

/** What is wanted of SVG files. */
export type SvgChoices = {
  /** How lines are drawn; unless it is said, as printed on pages and as hairlines in the files for machines. */
  readonly lines?: Lines
  /** Whether there is text; unless it is said, on pages and not in the files for machines. */
  readonly text?: boolean
  /** Whether the files for machines hold what is engraved, in a group of its own; unless it is said, they do not. */
  readonly engraving?: boolean
  /**
   * The width, in millimetres or as it is typed, of what parts the wood: the files for machines have their lines moved into
   * the waste by half of it. Pages never have: whoever saws by hand keeps to the line.
   */
  readonly kerf?: number | string
}

/** A file to be written: its name within the folder asked for, and what is in it. */
export type NamedBytes = { readonly name: string; readonly bytes: Uint8Array }
