import type { Lettering } from './drawn-sign.ts'
import { drawnGlyph, type Glyph } from './glyph.ts'
import { type Outline, placeOutline } from './outline.ts'
import { bar } from './pen.ts'

/**
 * The proportions of a stacked fraction, as parts of the height of capitals H. The figures are 0.7 H high, so
 * that 3.5 mm lettering has figures of 2.5 mm (neighbours in the series of ISO 3098, from memory); the bar lies
 * in the middle of the capitals and is as thick as the face draws a minus. Together it stands about 1.37 H above
 * and 0.37 H below the base line, which is no more than the face itself takes for accents and tails.
 */
const figureHeight = 0.7
const barToFigure = 0.12
/** How far the bar reaches past the wider number, and how far the neighbours stand off the bar. */
const barOverhang = 0.06
const bearing = 0.08

/** The numbers of a fraction that has a code point of its own, such as ⅜; undefined for any other. */
export function vulgarFraction(codePoint: number): { over: string; under: string } | undefined {
  const parts = /^(\d+)\u2044(\d+)$/.exec(String.fromCodePoint(codePoint).normalize('NFKD'))
  return parts === null ? undefined : { over: parts[1]!, under: parts[2]! }
}

/** One number over another as one glyph, which reads "1/2", or as it is told to. */
export function stackFraction(
  over: readonly Glyph[],
  under: readonly Glyph[],
  { capHeight, stroke }: Lettering,
  readsAs?: string,
): Glyph {
  const width = (glyphs: readonly Glyph[]): number =>
    figureHeight * glyphs.reduce((sum, g) => sum + g.advance, 0)
  const barWidth = Math.max(width(over), width(under)) + 2 * barOverhang * capHeight
  const start = bearing * capHeight
  const middle = start + barWidth / 2
  const axis = capHeight / 2
  const standOff = stroke / 2 + barToFigure * capHeight

  const set = (glyphs: readonly Glyph[], base: number): Outline => {
    let x = middle - width(glyphs) / 2
    return glyphs.flatMap(g => {
      const placed = placeOutline(g.outline, figureHeight, x, base)
      x += figureHeight * g.advance
      return placed
    })
  }

  const reads = (glyphs: readonly Glyph[]): string => glyphs.map(g => g.reads).join('')
  return drawnGlyph(readsAs ?? `${reads(over)}/${reads(under)}`, barWidth + 2 * start, [
    ...set(over, axis + standOff),
    ...bar({ x: start, y: axis }, { x: start + barWidth, y: axis }, stroke),
    ...set(under, axis - standOff - figureHeight * capHeight),
  ])
}
