import { coincident } from '../../number/tolerance.ts'
import type { Contour } from '../shape/contour.ts'
import { failure, type Outcome, success } from '../shape/outcome.ts'
import { distance, type Point } from '../shape/point.ts'
import { polygon } from '../shape/polygon.ts'
import { type Arc, line, type Segment } from '../shape/segment.ts'
import { signedArea } from './area.ts'
import { hullPoints } from './hull-points.ts'
import { arcSupports, cornerSupports, direction, outermost, type Support } from './support.ts'

/**
 * The convex hull of some points, counter-clockwise.
 *
 * Fails with reason `no-area` when the points lie in one line.
 */
export function convexHullOfPoints(points: readonly Point[]): Outcome<Contour> {
  const corners = hullPoints(points)
  return corners.length < 3 ? noArea('convexHullOfPoints', points) : success(polygon(corners))
}

/**
 * The convex hull of some contours, as if a string were pulled tight around them; counter-clockwise. Arcs of
 * it stay arcs and keep their tags, as do edges that are lines of the contours from end to end.
 *
 * Fails with reason `no-area` when everything lies in one line.
 *
 * Source: in every direction the hull reaches out as far as the farthest corner or arc does; the upper envelope
 * of these support functions, by divide and conquer.
 */
export function convexHull(contours: readonly Contour[]): Outcome<Contour> {
  const segments = contours.flatMap(c => c.segments)
  if (segments.length === 0) return noArea('convexHull', contours)
  const hull: Contour = {
    segments: pulledTight(supportsOf(segments), tagsOfLines(segments)),
    closed: true,
  }
  const wide = hull.segments.length >= 2 && signedArea(hull) > 0
  return wide ? success(hull) : noArea('convexHull', contours)
}

function noArea(operation: string, input: unknown) {
  return failure({ operation, reason: 'no-area', facts: {}, input })
}

/** What is outermost of some edges (at least one), in the order of directions from 0 to 2π. */
export function supportsOf(segments: readonly Segment[]): readonly Support[] {
  const corners = hullPoints(segments.flatMap(s => [s.from, s.to]))
  return outermost(cornerSupports(corners), outermostOfArcs(segments.filter(s => s.kind === 'arc')))
}

function outermostOfArcs(arcs: readonly Arc[]): readonly Support[] {
  if (arcs.length === 0) return []
  if (arcs.length === 1) return arcSupports(arcs[0]!)
  const half = arcs.length >> 1
  return outermost(outermostOfArcs(arcs.slice(0, half)), outermostOfArcs(arcs.slice(half)))
}

/** Where a support starts or ends on the hull; `given` when it is a point of the input and no calculated one. */
type End = { readonly point: Point; readonly given: boolean }

/** The edges around the supports: arcs where an arc is outermost, and straight between what is. */
function pulledTight(supports: readonly Support[], tagOf: TagOfLine): readonly Segment[] {
  const round = joinedAtStart(supports)
  const ends = round.flatMap(endsOf)
  const points = sharedPoints(ends, i => {
    if (i % 2 === 1) return distance(ends[i]!.point, ends[(i + 1) % ends.length]!.point) <= coincident
    const { start, end, radius } = round[i / 2]!
    return radius * (end - start) <= coincident
  })
  return points.flatMap((from, i): readonly Segment[] => {
    const to = points[(i + 1) % points.length]!
    if (from === to) return []
    if (i % 2 === 1) return [line(from, to, tagOf(from, to))]
    return [{ ...round[i / 2]!.arc!, from, to, turn: 1 }]
  })
}

/** An arc that was taken apart where the directions start again is one arc. */
function joinedAtStart(supports: readonly Support[]): readonly Support[] {
  const first = supports[0]
  const last = supports.at(-1)
  if (first === last || first?.arc === undefined || first.arc !== last?.arc) return supports
  return [{ ...last, end: last.end + first.end }, ...supports.slice(1, -1)]
}

function endsOf({ arc, centre, radius, start, end }: Support): readonly [End, End] {
  if (arc === undefined) {
    const corner = { point: centre, given: true }
    return [corner, corner]
  }
  const at = (angle: number): End => {
    const u = direction(angle)
    const point = { x: centre.x + radius * u.x, y: centre.y + radius * u.y }
    const given = [arc.from, arc.to].find(p => distance(p, point) <= coincident)
    return given === undefined ? { point, given: false } : { point: given, given: true }
  }
  return [at(start), at(end)]
}

/** One point for each run of ends that are one with the next (going round), a given one before a calculated. */
function sharedPoints(ends: readonly End[], oneWithNext: (i: number) => boolean): readonly Point[] {
  const count = ends.length
  const linked = ends.map((_, i) => oneWithNext(i))
  const points: Point[] = new Array(count)
  const gap = linked.lastIndexOf(false)
  let run: number[] = []
  for (let k = 1; k <= count; k++) {
    const i = (gap + k) % count
    run.push(i)
    if (linked[i] && k < count) continue
    const kept = run.find(j => ends[j]!.given) ?? run[0]!
    for (const j of run) points[j] = ends[kept]!.point
    run = []
  }
  return points
}

type TagOfLine = (from: Point, to: Point) => string | undefined

function tagsOfLines(segments: readonly Segment[]): TagOfLine {
  const lines = new Map<Point, Segment>()
  for (const s of segments) if (s.kind === 'line') lines.set(s.from, s)
  return (from: Point, to: Point) => {
    const forward = lines.get(from)
    if (forward?.to === to) return forward.tag
    const backward = lines.get(to)
    return backward?.to === from ? backward.tag : undefined
  }
}
