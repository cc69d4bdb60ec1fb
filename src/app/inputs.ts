import type { Weight } from '../text/fonts.ts'

/** A text as it was read, and the name under which messages speak of it. */
export type PlanText = { readonly text: string | Uint8Array; readonly file: string }

/** The bytes of the font files of each weight, the one that sets the measures first. */
export type FontBytes = Readonly<Record<Weight, readonly Uint8Array[]>>

/** What the whole job hangs on besides the plan; the date and version stand in the files that are made. */
export type Surroundings = { readonly fonts: FontBytes; readonly date: Date; readonly version: string }

/** A file to be written: its name within the folder asked for, and what is in it. */
export type NamedBytes = { readonly name: string; readonly bytes: Uint8Array }
