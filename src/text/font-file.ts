import { type PathCommand, parse } from 'opentype.js'
import type { Glyph } from './glyph.ts'
import { type OutlineStep, outlineBounds } from './outline.ts'

/** One file of the font, read: its letters and its measures, in ems. */
export type FontFile = {
  readonly capHeight: number
  /** How thick the face draws a straight stroke: that of its minus. */
  readonly stroke: number
  /** The letter for a code point; undefined where the file has none. */
  readonly glyph: (codePoint: number) => Glyph | undefined
}

/** A part of the height of capitals: that of ISO 3098 letters, type B (from memory). */
const usualStroke = 0.1

/**
 * Reads a WOFF or TrueType file.
 *
 * @param index where the file stands among the font's files
 * @throws Error when the bytes are no font: they come with the program, never from a plan
 */
export function readFontFile(bytes: Uint8Array, index: number): FontFile {
  const copy = new Uint8Array(bytes)
  const font = parse(copy.buffer)
  const em = font.unitsPerEm
  const height: unknown = font.tables.os2?.sCapHeight
  if (typeof height !== 'number' || !(height > 0)) {
    throw new Error('the font does not say how high its capitals are')
  }

  const capHeight = height / em
  const find = (codePoint: number): Glyph | undefined => {
    const letter = String.fromCodePoint(codePoint)
    if (font.charToGlyphIndex(letter) === 0) return undefined
    const glyph = font.charToGlyph(letter)
    const outline = glyph.path.commands.map(c => inEms(c, em))
    return {
      reads: letter,
      advance: (glyph.advanceWidth ?? 0) / em,
      outline,
      ink: outlineBounds(outline),
      file: { index, codePoint },
    }
  }
  const minus = find(0x2212)?.ink
  const stroke = minus === undefined ? usualStroke * capHeight : minus.top - minus.bottom
  return { capHeight, stroke, glyph: find }
}

function inEms(c: PathCommand, em: number): OutlineStep {
  switch (c.type) {
    case 'M':
      return { kind: 'move', to: { x: c.x / em, y: c.y / em } }
    case 'L':
      return { kind: 'line', to: { x: c.x / em, y: c.y / em } }
    case 'Q':
      return {
        kind: 'quadratic',
        control: { x: c.x1 / em, y: c.y1 / em },
        to: { x: c.x / em, y: c.y / em },
      }
    case 'C':
      return {
        kind: 'cubic',
        control1: { x: c.x1 / em, y: c.y1 / em },
        control2: { x: c.x2 / em, y: c.y2 / em },
        to: { x: c.x / em, y: c.y / em },
      }
    case 'Z':
      return { kind: 'close' }
  }
}
