import { drawnGlyph, type Glyph } from './glyph.ts'
import { mapOutline, placeOutline } from './outline.ts'
import { bar, ring } from './pen.ts'

/** What a sign is fitted to, in ems. */
export type Lettering = {
  readonly capHeight: number
  /** How thick the face draws a straight stroke. */
  readonly stroke: number
  /** The letters' own version of a code point, for signs that are built from it. */
  readonly glyph: (codePoint: number) => Glyph | undefined
}

/**
 * Signs that the shop needs and a text face leaves out, drawn by us; undefined for any other code point.
 */
export function drawnSign(codePoint: number, lettering: Lettering): Glyph | undefined {
  const build = signs.get(String.fromCodePoint(codePoint))
  return build?.(lettering)
}

const signs: ReadonlyMap<string, (lettering: Lettering) => Glyph | undefined> = new Map([
  ['⌀', diameterSign],
  ['≈', nearlyEqual],
  ['≤', (l: Lettering) => orEqual('≤', l, -1)],
  ['≥', (l: Lettering) => orEqual('≥', l, 1)],
  ['→', (l: Lettering) => arrow('→', l, ['↑'], true)],
  ['←', (l: Lettering) => arrow('←', l, ['↓'], true)],
  ['↔', (l: Lettering) => arrow('↔', l, ['↑', '↓'], true)],
  ['↕', (l: Lettering) => arrow('↕', l, ['↑', '↓'], false)],
])

/** A ring with a stroke through it, as ISO 129 writes it before a diameter; as high as a capital. */
function diameterSign({ capHeight, stroke }: Lettering): Glyph {
  const radius = 0.38 * capHeight
  const bearing = 0.1 * capHeight
  const reach = 0.5 * capHeight
  const centre = { x: bearing + reach, y: capHeight / 2 }
  // at 60 degrees; its ends reach to the base line and to the height of capitals
  const aside = { x: reach * Math.tan(Math.PI / 6), y: reach }
  return drawnGlyph('⌀', 2 * (bearing + reach), [
    ...ring(centre, radius, stroke),
    ...bar(
      { x: centre.x - aside.x, y: centre.y - aside.y },
      { x: centre.x + aside.x, y: centre.y + aside.y },
      stroke,
    ),
  ])
}

/** Two tildes of the face, one over the other. */
function nearlyEqual({ capHeight, glyph }: Lettering): Glyph | undefined {
  const tilde = glyph(0x7e)
  if (tilde?.ink === undefined) return undefined
  const middle = (tilde.ink.bottom + tilde.ink.top) / 2
  const apart = 0.15 * capHeight
  return drawnGlyph('≈', tilde.advance, [
    ...placeOutline(tilde.outline, 1, 0, capHeight / 2 - middle + apart),
    ...placeOutline(tilde.outline, 1, 0, capHeight / 2 - middle - apart),
  ])
}

function orEqual(sign: string, { capHeight, stroke }: Lettering, points: 1 | -1): Glyph {
  const bearing = 0.12 * capHeight
  const width = 0.6 * capHeight
  const [tip, tail] = points === 1 ? [bearing + width, bearing] : [bearing, bearing + width]
  return drawnGlyph(sign, width + 2 * bearing, [
    ...bar({ x: tail, y: 0.92 * capHeight }, { x: tip, y: 0.6 * capHeight }, stroke),
    ...bar({ x: tail, y: 0.28 * capHeight }, { x: tip, y: 0.6 * capHeight }, stroke),
    ...bar({ x: bearing, y: stroke / 2 }, { x: bearing + width, y: stroke / 2 }, stroke),
  ])
}

/** The face's upright arrows, one or both over each other, lying to the right of where they pointed up. */
function arrow(
  sign: string,
  { capHeight, glyph }: Lettering,
  upright: readonly string[],
  lying: boolean,
): Glyph | undefined {
  const parts = upright.map(letter => glyph(letter.codePointAt(0)!))
  const [first] = parts
  if (first?.ink === undefined) return undefined
  const outline = parts.flatMap(part => part?.outline ?? [])
  if (!lying) return drawnGlyph(sign, first.advance, outline)
  const { left, bottom, right, top } = first.ink
  const bearing = 0.1 * capHeight
  const axis = capHeight / 2 + (left + right) / 2
  return drawnGlyph(
    sign,
    top - bottom + 2 * bearing,
    mapOutline(outline, p => ({ x: bearing + p.y - bottom, y: axis - p.x })),
  )
}
