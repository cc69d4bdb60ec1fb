import type { Bounds } from '../geometry/shape/contour.ts'
import type { Font, Spelled } from './font.ts'
import type { Glyph } from './glyph.ts'
import type { Words } from './words.ts'

/** A glyph on its line; `x` is where it starts, in millimetres from the start of the line. */
export type PlacedGlyph = { readonly glyph: Glyph; readonly x: number }

/** A line of text, set. Millimetres, y up, counted from the start of the base line. */
export type Laid = {
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
  readonly glyphs: readonly PlacedGlyph[]
  /** Characters that are shown by their code: "U+4E2D". */
  readonly missing: readonly string[]
}

/**
 * Sets a line of words at a height of capitals in millimetres. Letters follow each other by their own widths
 * alone, without kerning or joined letters, so that every reader of the result puts them at the same places.
 */
export function layOut(font: Font, words: Words, capHeight: number): Laid {
  const size = capHeight / font.capHeight
  const glyphs: PlacedGlyph[] = []
  const missing: string[] = []
  let x = 0
  let ascent = font.capHeight
  let descent = font.depth
  let left = Infinity
  let bottom = Infinity
  let right = -Infinity
  let top = -Infinity

  for (const { glyphs: spelled, missing: lacking } of words.flatMap(word => spelledAs(font, word))) {
    for (const glyph of spelled) {
      glyphs.push({ glyph, x: x * size })
      if (glyph.ink !== undefined) {
        left = Math.min(left, x + glyph.ink.left)
        right = Math.max(right, x + glyph.ink.right)
        bottom = Math.min(bottom, glyph.ink.bottom)
        top = Math.max(top, glyph.ink.top)
      }
      x += glyph.advance
    }
    missing.push(...lacking)
  }
  ascent = Math.max(ascent, top)
  descent = Math.max(descent, -bottom)

  const box =
    left <= right
      ? { left: left * size, bottom: bottom * size, right: right * size, top: top * size }
      : { left: 0, bottom: 0, right: 0, top: 0 }
  return { size, width: x * size, ascent: ascent * size, descent: descent * size, box, glyphs, missing }
}

function spelledAs(font: Font, word: Words[number]): readonly Spelled[] {
  if (typeof word === 'string') return [font.spell(word)]
  const fraction = font.fraction(word.over, word.under)
  if (word.whole === undefined) return [fraction]
  return [font.spell(word.whole), { glyphs: [font.thinSpace], missing: [] }, fraction]
}

/** The line as it reads when it is copied, codes included. */
export function reading(laid: Laid): string {
  return laid.glyphs.map(g => g.glyph.reads).join('')
}
