import { biarcsOfCurve, type Curve } from '../../../src/geometry/construct/biarcs.ts'
import { regionsOf } from '../../../src/geometry/facts/nesting.ts'
import { orientRegion } from '../../../src/geometry/measure/orient.ts'
import type { Contour, Region } from '../../../src/geometry/shape/contour.ts'
import { distance, type Point } from '../../../src/geometry/shape/point.ts'
import { line, type Segment } from '../../../src/geometry/shape/segment.ts'
import { coincident } from '../../../src/number/tolerance.ts'
import type { Outline } from '../../../src/text/outline.ts'
import { bundledFonts } from '../../text/bundled-font.ts'
import { expectValue } from '../expect-value.ts'
import { pick } from './random.ts'

/** Letters and signs of one part and of several, with holes and without. */
const signs = [...'ABGJQRSaegijmsx0358&%@#?ßñŁΩЖ']

/** The size of an em, in mm, and how far the arcs may be from the font's curves. */
const em = 20
const maxDeviation = 0.005

const drawn = new Map<string, readonly Region[]>()
const fonts = bundledFonts()

/** A letter of the font that comes with the program, as lines and biarcs; the base line starts at the origin. */
export function letter(sign: string, weight: 'regular' | 'bold'): readonly Region[] {
  const name = `${sign} ${weight}`
  const known = drawn.get(name)
  if (known !== undefined) return known
  const [glyph] = fonts[weight].spell(sign).glyphs
  const regions = regionsOf(contoursOf(glyph!.outline)).map(orientRegion)
  drawn.set(name, regions)
  return regions
}

export function randomLetter(random: () => number): readonly Region[] {
  return letter(pick(random, signs), pick(random, ['regular', 'bold'] as const))
}

/** The closed contours of an outline. What a pen draws in one stroke ends in the very point it begins in. */
function contoursOf(outline: Outline): Contour[] {
  const contours: Contour[] = []
  let segments: Segment[] = []
  let start: Point = { x: 0, y: 0 }
  let at = start
  const inMm = (p: Point): Point => ({ x: em * p.x, y: em * p.y })
  const end = (p: Point): Point => (distance(inMm(p), start) <= coincident ? start : inMm(p))
  const close = (): void => {
    if (at !== start) segments.push(line(at, start))
    if (segments.length > 0) contours.push({ segments, closed: true })
    segments = []
  }
  const bend = (control1: Point, control2: Point, to: Point): void => {
    const curve = bezier([at, control1, control2, to])
    const pieces = expectValue(biarcsOfCurve(curve, maxDeviation)).segments
    segments.push(
      ...pieces.map(
        (s, i): Segment => ({
          ...s,
          ...(i === 0 ? { from: at } : {}),
          ...(i === pieces.length - 1 ? { to } : {}),
        }),
      ),
    )
  }
  for (const step of outline) {
    if (step.kind === 'close') {
      close()
      at = start
      continue
    }
    if (step.kind === 'move') {
      if (segments.length > 0) close()
      start = inMm(step.to)
      at = start
      continue
    }
    const to = end(step.to)
    if (step.kind === 'line') {
      if (distance(at, to) > coincident) segments.push(line(at, to))
    } else if (step.kind === 'cubic') bend(inMm(step.control1), inMm(step.control2), to)
    else if (step.kind === 'quadratic') {
      // a parabola as a cubic: its handles lie two thirds of the way to the one control point
      const control = inMm(step.control)
      const toward = (p: Point): Point => ({ x: (p.x + 2 * control.x) / 3, y: (p.y + 2 * control.y) / 3 })
      bend(toward(at), toward(to), to)
    }
    at = to
  }
  close()
  return contours
}

/** A cubic Bézier curve through its Bernstein polynomials. */
function bezier([a, b, c, d]: readonly [Point, Point, Point, Point]): Curve {
  return {
    pointAt: t => {
      const u = 1 - t
      const at = (p: number, q: number, r: number, s: number): number =>
        u * u * u * p + 3 * u * u * t * q + 3 * u * t * t * r + t * t * t * s
      return { x: at(a.x, b.x, c.x, d.x), y: at(a.y, b.y, c.y, d.y) }
    },
    directionAt: t => {
      const u = 1 - t
      const at = (p: number, q: number, r: number, s: number): number =>
        u * u * (q - p) + 2 * u * t * (r - q) + t * t * (s - r)
      return { x: at(a.x, b.x, c.x, d.x), y: at(a.y, b.y, c.y, d.y) }
    },
  }
}
