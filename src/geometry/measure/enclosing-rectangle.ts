import type { Contour } from '../shape/contour.ts'
import type { Point } from '../shape/point.ts'
import { supportsOf } from './hull.ts'
import { direction, normalised, type Support } from './support.ts'

/** A rectangle that may stand at an angle. */
export type LeaningRectangle = {
  readonly centre: Point
  /** Its side along `angle`, in millimetres. */
  readonly width: number
  /** Its side square to `angle`, in millimetres. */
  readonly height: number
  /** The direction of its width, in radians from 0 up to π/2, counter-clockwise from +x. */
  readonly angle: number
  /** Counter-clockwise, first the lower left one as seen along `angle`. */
  readonly corners: readonly [Point, Point, Point, Point]
}

const quarter = Math.PI / 2

/** In such a short turn the area, a wave of at most two rises a turn, has at most one lowest place. */
const longestStep = Math.PI / 16

/** Halving a step this often leaves nothing of it in a double. */
const mostHalvings = 60

/**
 * The rectangle of least area, at any angle, around some contours; arcs count exactly. Of several the one that
 * leans least. `undefined` when there is nothing to go round.
 *
 * Source: rotating calipers (Toussaint, 1983), carried on to arcs: between two directions where the outermost
 * points change, both sides are a constant and a sine wave, and the least product is found by halving.
 */
export function enclosingRectangle(contours: readonly Contour[]): LeaningRectangle | undefined {
  const segments = contours.flatMap(c => c.segments)
  if (segments.length === 0) return undefined
  const supports = supportsOf(segments)
  const turns = [...new Set([0, quarter, ...supports.map(s => s.start % quarter)])].sort((a, b) => a - b)
  let best = { angle: 0, area: Infinity }
  for (let i = 0; i + 1 < turns.length; i++) {
    const from = turns[i]!
    const to = turns[i + 1]!
    const box = calipers(supports, (from + to) / 2)
    const steps = Math.ceil((to - from) / longestStep)
    for (let k = 0; k < steps; k++) {
      const found = least(box, from + ((to - from) * k) / steps, from + ((to - from) * (k + 1)) / steps)
      if (found.area < best.area) best = found
    }
  }
  const angle = best.angle < quarter ? best.angle : 0
  return leaning(calipers(supports, angle), angle)
}

/** What is outermost in four directions, each a quarter turn after the one before. */
type Calipers = readonly [Support, Support, Support, Support]

function calipers(supports: readonly Support[], angle: number): Calipers {
  const at = (turned: number) => supportAt(supports, normalised(angle + turned))
  return [at(0), at(quarter), at(2 * quarter), at(3 * quarter)]
}

function supportAt(supports: readonly Support[], angle: number): Support {
  let low = 0
  let high = supports.length - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if (supports[middle]!.start <= angle) low = middle
    else high = middle - 1
  }
  return supports[low]!
}

/** The width between two opposite supports at an angle, and how fast it grows with the angle. */
function width(ahead: Support, behind: Support, angle: number): { size: number; growth: number } {
  const x = ahead.centre.x - behind.centre.x
  const y = ahead.centre.y - behind.centre.y
  const u = direction(angle)
  return { size: x * u.x + y * u.y + ahead.radius + behind.radius, growth: -x * u.y + y * u.x }
}

function areaAt([east, north, west, south]: Calipers, angle: number): { area: number; growth: number } {
  const across = width(east, west, angle)
  const along = width(north, south, angle + quarter)
  return {
    area: across.size * along.size,
    growth: across.growth * along.size + across.size * along.growth,
  }
}

function least(box: Calipers, from: number, to: number): { angle: number; area: number } {
  let low = from
  let high = to
  const ends = [from, to].map(angle => ({ angle, area: areaAt(box, angle).area }))
  const lower = ends[1]!.area < ends[0]!.area ? ends[1]! : ends[0]!
  if (!(areaAt(box, from).growth < 0 && areaAt(box, to).growth > 0)) return lower
  for (let i = 0; i < mostHalvings; i++) {
    const middle = (low + high) / 2
    if (areaAt(box, middle).growth < 0) low = middle
    else high = middle
  }
  return { angle: low, area: areaAt(box, low).area }
}

function leaning([east, north, west, south]: Calipers, angle: number): LeaningRectangle {
  const u = direction(angle)
  const v = { x: -u.y, y: u.x }
  const out = ({ centre, radius }: Support, w: Point) => centre.x * w.x + centre.y * w.y + radius
  const right = out(east, u)
  const top = out(north, v)
  const left = -out(west, { x: -u.x, y: -u.y })
  const bottom = -out(south, { x: -v.x, y: -v.y })
  const at = (a: number, b: number) => ({ x: a * u.x + b * v.x, y: a * u.y + b * v.y })
  return {
    centre: at((left + right) / 2, (bottom + top) / 2),
    width: right - left,
    height: top - bottom,
    angle,
    corners: [at(left, bottom), at(right, bottom), at(right, top), at(left, top)],
  }
}
