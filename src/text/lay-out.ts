import { scaleBounds } from '../geometry/measure/bounds.ts'
import type { Bounds } from '../geometry/shape/contour.ts'
import { type Extent, extentOf } from './extent.ts'
import type { Font, Spelled } from './font.ts'
import type { Glyph } from './glyph.ts'
import type { Words } from './words.ts'

/** A glyph on its line; `x` is where it starts, in millimetres from the start of the line. */
export type PlacedGlyph = { readonly glyph: Glyph; readonly x: number }

/** How much room a line of text takes. Millimetres, y up, counted from the start of the base line. */
export type Measured = {
  /** The length of an em. */
  readonly size: number
  /** From the start of the line to where the next letter would start. */
  readonly width: number
  /** What the line takes above the base line: the height of capitals, or of a fraction or accent where there is one. */
  readonly ascent: number
  /** What it takes below, positive downward: the tail of a p, or a fraction's lower number. */
  readonly descent: number
  /** The rectangle that the ink lies in; flat at the start of the line when there is none. */
  readonly box: Bounds
}

/** A line of text, set. */
export type Laid = Measured & {
  readonly glyphs: readonly PlacedGlyph[]
  /** Characters that are shown by their code: "U+4E2D". */
  readonly missing: readonly string[]
}

/**
 * Sets a line of words at a height of capitals in millimetres. Letters follow each other by their own widths
 * alone, without kerning or joined letters, so that every reader of the result puts them at the same places.
 */
export function layOut(font: Font, words: Words, capHeight: number): Laid {
  const measured = measureLine(font, words, capHeight)
  const glyphs: PlacedGlyph[] = []
  let x = 0
  for (const glyph of glyphsOf(font, words)) {
    glyphs.push({ glyph, x: x * measured.size })
    x += glyph.advance
  }
  return { ...measured, glyphs, missing: missingIn(font, words) }
}

/** What {@link layOut} would make of a line, less the letters: sheets measure many more lines than they set. */
export function measureLine(font: Font, words: Words, capHeight: number): Measured {
  const size = capHeight / font.capHeight
  const { advance, left, right, bottom, top } = extentIn(font, words)
  const ascent = Math.max(font.capHeight, top)
  const descent = Math.max(font.depth, -bottom)
  const box =
    left <= right ? scaleBounds({ left, bottom, right, top }, size) : { left: 0, right: 0, bottom: 0, top: 0 }
  return { size, width: advance * size, ascent: ascent * size, descent: descent * size, box }
}

/** The width of a line that is one run of letters, in millimetres, as {@link measureLine} has it. */
export function textWidth(font: Font, text: string, capHeight: number): number {
  return font.spell(text).extent.advance * (capHeight / font.capHeight)
}

function extentIn(font: Font, words: Words): Extent {
  const [first] = words
  return words.length === 1 && typeof first === 'string'
    ? font.spell(first).extent
    : extentOf(glyphsOf(font, words))
}

/** The letters of a line in their order. */
export function glyphsOf(font: Font, words: Words): readonly Glyph[] {
  const [first] = words
  // most lines are one run of letters
  if (words.length === 1 && typeof first === 'string') return font.spell(first).glyphs
  return words.flatMap(word => spelledAs(font, word).flatMap(({ glyphs }) => glyphs))
}

/** Characters of a line that are shown by their code: "U+4E2D". */
export function missingIn(font: Font, words: Words): readonly string[] {
  return words.flatMap(word => spelledAs(font, word).flatMap(({ missing }) => missing))
}

function spelledAs(font: Font, word: Words[number]): readonly Spelled[] {
  if (typeof word === 'string') return [font.spell(word)]
  const fraction = font.fraction(word.over, word.under)
  if (word.whole === undefined) return [fraction]
  return [font.spell(word.whole), font.thinSpace, fraction]
}

/** The line as it reads when it is copied, codes included. */
export function reading(laid: Laid): string {
  return laid.glyphs.map(g => g.glyph.reads).join('')
}
