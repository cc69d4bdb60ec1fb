import type { Source } from '../finding/source.ts'
import type { WrittenSize } from '../length/written-size.ts'

export type Located<T> = { readonly value: T; readonly source: Source }

/** A size with the place where it stands; `source` covers the size's own characters. */
export type WrittenLength = { readonly size: WrittenSize; readonly source: Source }

/** An angle in degrees, or a formula of one; positive is anticlockwise. */
export type WrittenAngle = WrittenLength
