import type { Place } from '../finding/finding.ts'
import type { Source } from '../finding/source.ts'
import type { Size } from './size.ts'

/** A name that the maker chose, with every place where it is used. */
export type DefinedName = {
  readonly kind: 'let' | 'stock' | 'pin' | 'part'
  readonly name: string
  readonly label?: string
  readonly source: Source
  readonly uses: readonly Source[]
}

/**
 * A size that was scaled off the drawing, or calculated from one that was, and has not been confirmed. `written`
 * with its own `~` or without tells the two apart.
 */
export type ScaledSize = {
  readonly size: Size
  /** Where it belongs: a part and a feature, or neither for a name from `let`. */
  readonly place: Place
  /** Of a distance that places a cut: along which axis of its face. */
  readonly axis?: 'x' | 'y'
  readonly origin: 'measured' | 'calculated'
}
