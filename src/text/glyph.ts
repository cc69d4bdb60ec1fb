import type { Bounds } from '../geometry/shape/contour.ts'
import { type Outline, outlineBounds } from './outline.ts'

/**
 * A letter, a sign or a whole stacked fraction as it stands on the line. Lengths are in ems.
 */
export type Glyph = {
  /** What is copied or read aloud where this is seen: "a", "1/2". */
  readonly reads: string
  /** How far the next glyph starts after this one. */
  readonly advance: number
  readonly outline: Outline
  /** The rectangle that the ink lies in; undefined for a blank. */
  readonly ink: Bounds | undefined
  /** Where it is to be found in the font's files; undefined for what we draw ourselves. */
  readonly file: { readonly index: number; readonly codePoint: number } | undefined
}

/** A glyph of our own drawing. */
export function drawnGlyph(reads: string, advance: number, outline: Outline): Glyph {
  return { reads, advance, outline, ink: outlineBounds(outline), file: undefined }
}
