import { coincident } from '../../number/tolerance.ts'
import type { Contour } from '../shape/contour.ts'
import { failure, type Outcome, success } from '../shape/outcome.ts'
import { distance, type Point } from '../shape/point.ts'
import { type Arc, line, type Segment } from '../shape/segment.ts'
import { spans } from '../shape/span.ts'
import type { Disc } from './carrier.ts'

/** Each round lets the circle grow; shapes met in practice settle within a few dozen. */
const mostRounds = 1000

/**
 * The smallest circle around some contours; arcs count exactly.
 *
 * Fails with reason `empty` when there is nothing to go round, and with `no-end` should the search not settle:
 * a circle that is given is at most `coincident` larger than the smallest, and nearly always exact.
 *
 * Source: the smallest circle is held by at most three things; the thing farthest outside the present circle
 * joins those that hold it, until nothing is outside (the scheme of Gärtner, Fast and Robust Smallest Enclosing
 * Balls, 1999, with arcs beside points).
 */
export function enclosingCircle(contours: readonly Contour[]): Outcome<Disc> {
  return enclose(
    'enclosingCircle',
    contours.flatMap(c => c.segments),
    contours,
  )
}

/** The smallest circle around some points; fails as {@link enclosingCircle}. */
export function enclosingCircleOfPoints(points: readonly Point[]): Outcome<Disc> {
  const segments = points.map(p => line(p, p))
  return enclose('enclosingCircleOfPoints', segments, points)
}

function enclose(operation: string, segments: readonly Segment[], input: unknown): Outcome<Disc> {
  const first = segments[0]
  if (first === undefined) return failure({ operation, reason: 'empty', facts: {}, input })
  let holding: readonly Segment[] = [first]
  let circle = smallestAround(holding)
  // no circle around everything is smaller than one around a few, nor need it be larger than the best so far
  let best: Disc = { ...circle, radius: Infinity }
  for (let round = 0; round < mostRounds; round++) {
    const outermost = farthest(segments, circle.centre)
    if (outermost.reach < best.radius) best = { centre: circle.centre, radius: outermost.reach }
    if (best.radius - circle.radius <= roundingOf(best)) return success(best)
    const together = [...holding, outermost.segment]
    const found = smallestAround(together)
    if (!(found.radius > circle.radius)) break
    circle = found
    holding = needed(together, circle)
  }
  if (best.radius - circle.radius <= coincident) return success(best)
  const { centre, radius } = best
  return failure({ operation, reason: 'no-end', facts: { x: centre.x, y: centre.y, radius }, input })
}

function farthest(segments: readonly Segment[], from: Point): { segment: Segment; reach: number } {
  let best = { segment: segments[0]!, reach: -1 }
  for (const segment of segments) {
    const reach = farthestOnSegment(segment, from)
    if (reach > best.reach) best = { segment, reach }
  }
  return best
}

/** How far the farthest point of an edge is from `p`, in millimetres. */
function farthestOnSegment(s: Segment, p: Point): number {
  const ends = Math.max(distance(p, s.from), distance(p, s.to))
  if (s.kind === 'line') return ends
  return hasFarSide(s, p) ? Math.max(ends, distance(p, s.centre) + s.radius) : ends
}

/** Whether the point of the arc's circle that is farthest from `p` is on the arc. */
function hasFarSide(a: Arc, p: Point): boolean {
  return spans(a, { x: 2 * a.centre.x - p.x, y: 2 * a.centre.y - p.y })
}

/** Those of a few edges without which the smallest circle around them would be smaller. */
function needed(segments: readonly Segment[], circle: Disc): readonly Segment[] {
  return segments.reduce((kept, segment) => {
    const others = kept.filter(s => s !== segment)
    const without = others.length > 0 ? smallestAround(others).radius : 0
    return circle.radius - without <= roundingOf(circle) ? others : kept
  }, segments)
}

type Hold = Disc & { readonly segment: Segment }

/**
 * The smallest circle around a few edges. Of all circles that some three of their ends and arcs could hold,
 * that whose centre is least far from the farthest of the edges: a centre that came out badly, of nearly
 * collinear things say, is farther than others and drops out.
 */
function smallestAround(segments: readonly Segment[]): Disc {
  const holds = segments.flatMap((segment): readonly Hold[] => {
    const ends = [segment.from, segment.to].map(centre => ({ centre, radius: 0, segment }))
    return segment.kind === 'line'
      ? ends
      : [...ends, { centre: segment.centre, radius: segment.radius, segment }]
  })
  let best: Disc = { centre: segments[0]!.from, radius: Infinity }
  const consider = (centre: Point) => {
    // three things in line, or as good as, have no circle: their centre is a division by nothing
    if (!Number.isFinite(centre.x) || !Number.isFinite(centre.y)) return
    const { reach } = farthest(segments, centre)
    if (reach < best.radius) best = { centre, radius: reach }
  }
  holds.forEach((a, i) => {
    // an end alone holds nothing unless it is all there is; an arc of half a turn and more holds its circle
    consider(a.centre)
    holds.slice(0, i).forEach((b, j) => {
      const pair = aroundTwo(a, b)
      if (pair !== undefined) consider(pair)
      for (const c of holds.slice(0, j)) for (const centre of aroundThree(a, b, c)) consider(centre)
    })
  })
  return best
}

/** What a few operations on doubles of this size can lose, with a factor for how they add up. */
function roundingOf({ centre, radius }: Disc): number {
  return 256 * Number.EPSILON * (Math.abs(centre.x) + Math.abs(centre.y) + radius)
}

/** The centre of the smallest circle around two others, when neither is inside the other. */
function aroundTwo(a: Disc, b: Disc): Point | undefined {
  const apart = distance(a.centre, b.centre)
  if (!(apart > Math.abs(a.radius - b.radius))) return undefined
  const radius = (apart + a.radius + b.radius) / 2
  const share = (radius - a.radius) / apart
  return {
    x: a.centre.x + (b.centre.x - a.centre.x) * share,
    y: a.centre.y + (b.centre.y - a.centre.y) * share,
  }
}

/**
 * The centres of the circles that three others touch from within. Subtracting the equations |p − cᵢ| = R − rᵢ in pairs leaves
 * two that are linear in p and R: a line in (x, y, R), which the first then meets in at most two points.
 */
function aroundThree(a: Disc, b: Disc, c: Disc): readonly Point[] {
  const row = (d: Disc) => {
    const x = d.centre.x - a.centre.x
    const y = d.centre.y - a.centre.y
    const r = d.radius - a.radius
    // with p and R counted from a's centre and radius: x·px + y·py − r·R = right
    return { x, y, r: -r, right: (x * x + y * y - r * r) / 2 }
  }
  const p = row(b)
  const q = row(c)
  const dx = p.y * q.r - p.r * q.y
  const dy = p.r * q.x - p.x * q.r
  const dr = p.x * q.y - p.y * q.x
  const size = dx * dx + dy * dy + dr * dr
  if (size === 0) return []
  // the point of the line nearest to the origin
  const x0 = (p.right * (q.y * dr - q.r * dy) + q.right * (dy * p.r - dr * p.y)) / size
  const y0 = (p.right * (q.r * dx - q.x * dr) + q.right * (dr * p.x - dx * p.r)) / size
  const r0 = (p.right * (q.x * dy - q.y * dx) + q.right * (dx * p.y - dy * p.x)) / size
  // x² + y² = R² along the line
  return roots(dx * dx + dy * dy - dr * dr, x0 * dx + y0 * dy - r0 * dr, x0 * x0 + y0 * y0 - r0 * r0)
    .filter(t => a.radius + r0 + t * dr > 0)
    .map(t => ({ x: a.centre.x + x0 + t * dx, y: a.centre.y + y0 + t * dy }))
}

/** The solutions of a·t² + 2b·t + c = 0. */
function roots(a: number, b: number, c: number): readonly number[] {
  if (a === 0) return b === 0 ? [] : [-c / (2 * b)]
  const root = Math.sqrt(b * b - a * c)
  if (Number.isNaN(root)) return []
  const q = -(b + (b < 0 ? -root : root))
  return q === 0 ? [0] : [q / a, c / q]
}
