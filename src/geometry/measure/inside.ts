import { orientation } from '../../number/predicates.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Contour, Region } from '../shape/contour.ts'
import type { Point } from '../shape/point.ts'
import type { Arc, Segment } from '../shape/segment.ts'
import { spans } from '../shape/span.ts'
import { nearestOnSegment } from './nearest.ts'

/** Where a point lies. `on`: within `coincident` of the boundary. */
export type Side = 'inside' | 'outside' | 'on'

/**
 * Where a point lies to a closed contour, whichever way that runs; where a contour crosses itself, by the
 * even-odd rule. Lines decide by exact signs. An arc decides by its own circle, never by chords, and only for
 * points farther from it than `coincident`, where rounding cannot turn the answer.
 */
export function pointInContour(contour: Contour, p: Point): Side {
  let crossings = 0
  for (const s of contour.segments) {
    if (mayTouch(s, p) && nearestOnSegment(s, p).distance <= coincident) return 'on'
    crossings += rayCrossings(s, p)
  }
  return crossings % 2 === 1 ? 'inside' : 'outside'
}

/** Where a point lies to a region: inside its outer contour and outside every hole, or on one of them. */
export function pointInRegion(region: Region, p: Point): Side {
  const outer = pointInContour(region.outer, p)
  if (outer !== 'inside') return outer
  for (const hole of region.holes) {
    const side = pointInContour(hole, p)
    if (side !== 'outside') return side === 'on' ? 'on' : 'outside'
  }
  return 'inside'
}

/**
 * How often the ray from `p` in the direction of +x meets an edge. Over a closed contour an odd sum is inside.
 * Reliable for a point farther from the edge than `coincident`.
 */
export function rayCrossings(s: Segment, p: Point): number {
  return s.kind === 'line' ? lineCrossings(s.from, s.to, p) : arcCrossings(s, p)
}

/** Whether the edge comes near enough for a measurement to be worth while; a box a little too large will do. */
function mayTouch(s: Segment, p: Point): boolean {
  if (s.kind === 'arc') {
    const reach = s.radius + 2 * coincident
    return Math.abs(p.x - s.centre.x) <= reach && Math.abs(p.y - s.centre.y) <= reach
  }
  const { from, to } = s
  return (
    p.x >= Math.min(from.x, to.x) - coincident &&
    p.x <= Math.max(from.x, to.x) + coincident &&
    p.y >= Math.min(from.y, to.y) - coincident &&
    p.y <= Math.max(from.y, to.y) + coincident
  )
}

/** How often the ray from `p` to the right meets the edge: 0 or 1. An end belongs to the part below it. */
function lineCrossings(from: Point, to: Point, p: Point): number {
  if (from.y > p.y === to.y > p.y) return 0
  if (from.x > p.x && to.x > p.x) return 1
  if (from.x <= p.x && to.x <= p.x) return 0
  const upward = to.y > from.y
  return orientation(from, to, p) > 0 === upward ? 1 : 0
}

/**
 * The arc is taken apart at its highest and lowest points, so each piece climbs or falls all the way and meets
 * the ray at most once. Both neighbours of such a place use the same height, so none is counted twice.
 */
function arcCrossings(a: Arc, p: Point): number {
  const { centre, radius } = a
  if (Math.abs(p.y - centre.y) > radius + 2 * coincident || p.x > centre.x + radius + 2 * coincident) return 0
  const top = { x: centre.x, y: centre.y + radius }
  const bottom = { x: centre.x, y: centre.y - radius }
  const heights = [a.from.y, ...turningHeights(a, top, bottom), a.to.y]
  // running counter-clockwise the right half climbs; so a piece's direction tells which half it is
  let count = 0
  for (let i = 0; i + 1 < heights.length; i++) {
    const low = heights[i]! > p.y
    const high = heights[i + 1]! > p.y
    if (low === high) continue
    const rightHalf = high === (a.turn === 1)
    const insideCircle = Math.hypot(p.x - centre.x, p.y - centre.y) < radius
    if (rightHalf ? insideCircle || p.x < centre.x : !insideCircle && p.x < centre.x) count++
  }
  return count
}

/**
 * The heights of the arc's highest and lowest points, in the order in which it passes them. One that is an end
 * of the arc is not passed: its height is there already.
 */
function turningHeights(a: Arc, top: Point, bottom: Point): readonly number[] {
  const upright = (p: Point) => p.x === a.centre.x
  const endsAt = (above: boolean) => [a.from, a.to].some(p => upright(p) && p.y > a.centre.y === above)
  const passesTop = spans(a, top) && !endsAt(true)
  const passesBottom = spans(a, bottom) && !endsAt(false)
  if (passesTop && passesBottom) {
    // counter-clockwise the right half leads to the top, the left half to the bottom
    const startsRight = a.from.x > a.centre.x
    return startsRight === (a.turn === 1) ? [top.y, bottom.y] : [bottom.y, top.y]
  }
  return passesTop ? [top.y] : passesBottom ? [bottom.y] : []
}
