import { signedArea } from '../../../src/geometry/measure/area.ts'
import { pointInRegion } from '../../../src/geometry/measure/inside.ts'
import { segmentLength } from '../../../src/geometry/measure/length.ts'
import { nearestOnContour, nearestOnSegment } from '../../../src/geometry/measure/nearest.ts'
import type { PathOptions } from '../../../src/geometry/offset/options.ts'
import type { Contour, Region } from '../../../src/geometry/shape/contour.ts'
import { distance, type Point, type Vector } from '../../../src/geometry/shape/point.ts'
import { reverseContour } from '../../../src/geometry/shape/reverse.ts'
import { type Segment, sweep } from '../../../src/geometry/shape/segment.ts'
import { coincident, printable } from '../../../src/number/tolerance.ts'

/** What an offset promises: the distance of its points, within this. */
export const promised = printable / 10

/** The shapes that were offset: regions by a signed distance, or a path by a positive one. */
export type Asked =
  | {
      readonly kind: 'regions'
      readonly regions: readonly Region[]
      readonly delta: number
      readonly options: PathOptions
    }
  | { readonly kind: 'path'; readonly path: Contour; readonly delta: number; readonly options: PathOptions }

export function contoursOf(regions: readonly Region[]): Contour[] {
  return regions.flatMap(r => [r.outer, ...r.holes])
}

export function distanceTo(contours: readonly Contour[], p: Point): number {
  return Math.min(...contours.map(c => nearestOnContour(c, p)?.distance ?? Infinity))
}

export function isInside(regions: readonly Region[], p: Point): boolean {
  return regions.some(r => pointInRegion(r, p) !== 'outside')
}

export function sourceOf(asked: Asked): readonly Contour[] {
  return asked.kind === 'path' ? [asked.path] : contoursOf(asked.regions)
}

/** Whether distance alone says what belongs to the offset. */
export function roundAllOver(asked: Asked): boolean {
  const { join = 'round', end = 'round' } = asked.options
  return join === 'round' && (asked.kind === 'regions' || asked.path.closed || end === 'round')
}

/** The middle of an edge, on the edge. */
export function middleOf(s: Segment): Point {
  if (s.kind === 'line') return { x: (s.from.x + s.to.x) / 2, y: (s.from.y + s.to.y) / 2 }
  const half = sweep(s) / 2
  const dx = s.from.x - s.centre.x
  const dy = s.from.y - s.centre.y
  return {
    x: s.centre.x + dx * Math.cos(half) - dy * Math.sin(half),
    y: s.centre.y + dx * Math.sin(half) + dy * Math.cos(half),
  }
}

/**
 * Whether a point belongs to the offset by its definition alone, with nothing from the code that is tested:
 * the shape with the band beside every edge and what its corners and ends add, or the shape less those.
 */
export function belongs(asked: Asked, p: Point): boolean {
  const { delta, options } = asked
  const reach = Math.abs(delta)
  if (roundAllOver(asked)) {
    const near = distanceTo(sourceOf(asked), p) <= reach
    if (asked.kind === 'path') return near
    return delta > 0 ? near || isInside(asked.regions, p) : !near && isInside(asked.regions, p)
  }
  if (asked.kind === 'path') {
    const sides = [asked.path, reverseContour(asked.path)]
    return sides.some(side => beside(side, reach, options, p))
  }
  const inside = isInside(asked.regions, p)
  const turned = asked.regions.flatMap(r => [turnedTo(r.outer, 1), ...r.holes.map(h => turnedTo(h, -1))])
  const sides = delta > 0 ? turned : turned.map(reverseContour)
  const near = sides.some(side => beside(side, reach, options, p))
  return delta > 0 ? inside || near : inside && !near
}

function turnedTo(contour: Contour, sign: 1 | -1): Contour {
  return signedArea(contour) * sign < 0 ? reverseContour(contour) : contour
}

/** Whether a point lies in the band on the right of a chain, or in what its corners and ends add there. */
function beside(chain: Contour, reach: number, options: PathOptions, p: Point): boolean {
  const { closed } = chain
  // what is shorter than the kernel tells points apart has no corners of its own
  const segments = chain.segments.filter(s => segmentLength(s) > coincident)
  for (let i = 0; i < segments.length; i++) {
    const s = segments[i]!
    if (inBand(s, reach, p)) return true
    const next = segments[i + 1] ?? (closed ? segments[0] : undefined)
    if (next === undefined) {
      if (inEnd(s, reach, options, p)) return true
    } else if (inCorner(s, next, reach, options, p)) return true
  }
  return false
}

function inBand(s: Segment, reach: number, p: Point): boolean {
  const near = nearestOnSegment(s, p)
  if (near.distance > reach) return false
  if (distance(near.point, s.from) < 1e-12 || distance(near.point, s.to) < 1e-12) return false
  const t = directionAt(s, near.point)
  return (p.x - near.point.x) * t.y - (p.y - near.point.y) * t.x >= 0
}

/** The unit direction in which an edge runs at a point on it. */
export function directionAt(s: Segment, p: Point): Vector {
  const dx = s.kind === 'line' ? s.to.x - s.from.x : -(p.y - s.centre.y) * s.turn
  const dy = s.kind === 'line' ? s.to.y - s.from.y : (p.x - s.centre.x) * s.turn
  const size = Math.hypot(dx, dy)
  return { x: dx / size, y: dy / size }
}

function inCorner(a: Segment, b: Segment, reach: number, options: PathOptions, p: Point): boolean {
  const v = a.to
  if (options.join === undefined || options.join === 'round') {
    // the whole disc about the corner: what lies outside the sector is in a band or in the shape anyway
    return distance(v, p) <= reach && !isLeftOfBoth(a, b, p)
  }
  const t = directionAt(a, v)
  const u = directionAt(b, v)
  const cross = t.x * u.y - t.y * u.x
  const dot = t.x * u.x + t.y * u.y
  if (cross < 0 || (cross < 1e-9 && dot > 0)) return false
  const corners = [v, { x: v.x + reach * t.y, y: v.y - reach * t.x }]
  if (options.join === 'mitre' && 1 / Math.sqrt((1 + dot) / 2) <= (options.mitreLimit ?? 4)) {
    const scale = reach / (1 + dot)
    corners.push({ x: v.x + scale * (t.y + u.y), y: v.y - scale * (t.x + u.x) })
  }
  corners.push({ x: v.x + reach * u.y, y: v.y - reach * u.x })
  return inConvex(corners, p)
}

/** Round joins count the disc on the side of the offset alone, which a corner's two edges bound. */
function isLeftOfBoth(a: Segment, b: Segment, p: Point): boolean {
  const v = a.to
  const t = directionAt(a, v)
  const u = directionAt(b, v)
  const q = { x: p.x - v.x, y: p.y - v.y }
  const cross = t.x * u.y - t.y * u.x
  const behind = q.x * t.x + q.y * t.y
  const ahead = q.x * u.x + q.y * u.y
  // the sector between the two normals: past the end of one, before the start of the other
  const sector = cross >= 0 && behind >= 0 && ahead <= 0
  return !sector
}

function inEnd(s: Segment, reach: number, options: PathOptions, p: Point): boolean {
  const end = options.end ?? 'round'
  const v = s.to
  if (end === 'flat') return false
  const t = directionAt(s, v)
  const ahead = (p.x - v.x) * t.x + (p.y - v.y) * t.y
  if (ahead < 0) return false
  if (end === 'round') return distance(v, p) <= reach
  return ahead <= reach && Math.abs((p.x - v.x) * t.y - (p.y - v.y) * t.x) <= reach
}

/** Inside a polygon whose corners run counter-clockwise and bulge everywhere. */
function inConvex(corners: readonly Point[], p: Point): boolean {
  return corners.every((a, i) => {
    const b = corners[(i + 1) % corners.length]!
    return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x) >= 0
  })
}
