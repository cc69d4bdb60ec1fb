import type { Point } from '../geometry/shape/point.ts'
import { drawnGlyph, type Glyph } from './glyph.ts'
import { mapOutline, type Outline, type OutlineStep, placeOutline } from './outline.ts'

/** What a sign is fitted to, in ems. */
export type Lettering = {
  readonly capHeight: number
  /** The letters' own version of a code point, for signs that are built from it. */
  readonly glyph: (codePoint: number) => Glyph | undefined
}

/** The stroke of the signs, as a part of the height of capitals: that of ISO 3098 letters, type B (from memory). */
const strokePart = 0.1

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
function diameterSign({ capHeight }: Lettering): Glyph {
  const stroke = strokePart * capHeight
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

function orEqual(sign: string, { capHeight }: Lettering, points: 1 | -1): Glyph {
  const stroke = strokePart * capHeight
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

/** A straight stroke of the pen with square ends, counter-clockwise. */
export function bar(from: Point, to: Point, width: number): Outline {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const x = (-(to.y - from.y) / length) * (width / 2)
  const y = ((to.x - from.x) / length) * (width / 2)
  return polygon([
    { x: from.x - x, y: from.y - y },
    { x: to.x - x, y: to.y - y },
    { x: to.x + x, y: to.y + y },
    { x: from.x + x, y: from.y + y },
  ])
}

function polygon(corners: readonly Point[]): Outline {
  return [
    ...corners.map((to, i): OutlineStep => ({ kind: i === 0 ? 'move' : 'line', to })),
    { kind: 'close' },
  ]
}

/** A round stroke of the pen: the outer circle runs counter-clockwise, the inner one the other way. */
function ring(centre: Point, radius: number, width: number): Outline {
  return [...round(centre, radius + width / 2, 1), ...round(centre, radius - width / 2, -1)]
}

/** Four cubic curves; for lettering their error of 0.03 % of the radius is nothing. */
function round(centre: Point, radius: number, turn: 1 | -1): Outline {
  const handle = (4 / 3) * Math.tan(Math.PI / 8)
  const at = (u: number, v: number): Point => ({ x: centre.x + radius * u, y: centre.y + turn * radius * v })
  const quarter = (ux: number, uy: number, vx: number, vy: number): OutlineStep => ({
    kind: 'cubic',
    control1: at(ux + handle * vx, uy + handle * vy),
    control2: at(vx + handle * ux, vy + handle * uy),
    to: at(vx, vy),
  })
  return [
    { kind: 'move', to: at(1, 0) },
    quarter(1, 0, 0, 1),
    quarter(0, 1, -1, 0),
    quarter(-1, 0, 0, -1),
    quarter(0, -1, 1, 0),
    { kind: 'close' },
  ]
}
