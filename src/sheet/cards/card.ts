import type { Words } from '../../text/words.ts'

/** A card to take to the paper drawing: what the plan asks about one part, filled in as far as it is known. */
export type Card = {
  /** Name, pieces, stock: what stands over everything. */
  readonly fields: readonly Field[]
  /** What the maker calls a side, beside its plain name. */
  readonly sideNames: Readonly<Record<string, string>>
  readonly blocks: readonly Block[]
}

/** A place to write in, with a small word that says what; `share` is its part of the width, in any measure. */
export type Field = { readonly label: string; readonly share: number; readonly text?: string }

/** What belongs together, the sizes of the part or one hole or slot, kept together on the page. */
export type Block = { readonly heading: readonly Field[]; readonly entries: readonly Entry[] }

/** One size: what it is, the side it is measured from if it is measured from one, and what the drawing says of it. */
export type Entry = {
  readonly what: string
  readonly from?: string
  /** There is no side to write down: the size is no distance. */
  readonly noSide?: true
  readonly value: Value
}

/** Not yet known; looked for on the drawing in vain; or known, as given on the drawing or as scaled off it. */
export type Value =
  | { readonly kind: 'open' | 'not-given' }
  | { readonly kind: 'given' | 'measured'; readonly words: Words }

export const open: Value = { kind: 'open' }
