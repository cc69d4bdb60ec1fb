import { union } from '../../src/geometry/boolean/boolean.ts'
import { circle } from '../../src/geometry/shape/circle.ts'
import type { Contour } from '../../src/geometry/shape/contour.ts'
import { compose, scale, shift } from '../../src/geometry/shape/matrix.ts'
import type { Point } from '../../src/geometry/shape/point.ts'
import { polygon } from '../../src/geometry/shape/polygon.ts'
import { line } from '../../src/geometry/shape/segment.ts'
import { transformContour } from '../../src/geometry/shape/transform.ts'
import { coincident } from '../../src/number/tolerance.ts'
import { picture } from './picture.ts'
import { given } from './shapes.ts'

const at = (x: number, y: number): Point => ({ x, y })

/**
 * Two regions that should share an edge and a corner, and miss it by a few tenths of `coincident`: as given
 * and as their union leaves them, a hundred-thousandth of a millimetre across.
 */
export function drawSnapping(): string {
  const page = picture()
  const off = coincident
  const lower = polygon([at(-1, -1), at(1, -1), at(1, 0), at(-1, 0)])
  // its corner is meant to stand on the edge below
  const upper = polygon([at(0, 0.35 * off), at(1, 1), at(-1, 1)])
  const joined = given(union([{ outer: lower, holes: [] }], [{ outer: upper, holes: [] }]))
  // what lies within a few coincidences of the origin, enlarged
  const enlarge = (x: number) => compose(scale(12 / off), shift(x, 0))
  const near = 3.2 * off
  const windowed = (c: Contour) =>
    c.segments.flatMap(s => {
      const clipped = clip(s.from, s.to, near)
      return clipped === undefined ? [] : [line(clipped[0], clipped[1])]
    })
  const draw = (x: number, contours: readonly Contour[]) => {
    for (const c of contours) {
      const shown = transformContour({ segments: windowed(c), closed: false }, enlarge(x))
      page.segments(shown.segments, 'thick')
      for (const s of c.segments) {
        if (Math.hypot(s.from.x, s.from.y) < near)
          page.dot(at(x + s.from.x * (12 / off), s.from.y * (12 / off)), 1.4)
      }
    }
  }
  page.contour(circle(at(0, 0.35 * 12), 12), 'dashed')
  draw(0, [lower, upper])
  draw(
    95,
    joined.flatMap(r => [r.outer, ...r.holes]),
  )
  page.words(at(0, -14), 'as given: 0.35 of coincident apart')
  page.words(at(95, -14), 'as overlaid: one vertex')
  page.words(at(0, 42), 'the circle has the radius coincident: 1e-6 mm', 3.2)
  return page.finish('An end within coincident of an edge becomes a vertex of that edge', 170)
}

/** The part of a straight edge inside a square of half width `half` about the origin. */
function clip(a: Point, b: Point, half: number): readonly [Point, Point] | undefined {
  let low = 0
  let high = 1
  for (const [from, run] of [
    [a.x, b.x - a.x],
    [a.y, b.y - a.y],
  ] as const) {
    for (const side of [-half, half]) {
      const enters = run > 0 === side < 0
      if (run === 0) {
        if (Math.abs(from) > half) return undefined
        continue
      }
      const t = (side - from) / run
      if (enters) low = Math.max(low, t)
      else high = Math.min(high, t)
    }
  }
  if (low >= high) return undefined
  const on = (t: number) => at(a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t)
  return [on(low), on(high)]
}
