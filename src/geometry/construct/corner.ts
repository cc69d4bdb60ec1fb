import { coincident } from '../../number/tolerance.ts'
import { leftOf, pointAt, tangentAt } from '../measure/along.ts'
import {
  circleCircleCrossings,
  type Disc,
  lineCircleCrossings,
  lineLineCrossing,
} from '../measure/carrier.ts'
import { segmentLength } from '../measure/length.ts'
import { nearestOnSegment } from '../measure/nearest.ts'
import type { Contour } from '../shape/contour.ts'
import { failure, type Outcome, success } from '../shape/outcome.ts'
import { between, distance, type Point } from '../shape/point.ts'
import { type Arc, arcOf, type Line, line, type Segment, withEnds } from '../shape/segment.ts'

/** Two edges that met in a corner, cut back, and what stands between them now; neighbours share their ends. */
export type Eased<T extends Segment> = {
  readonly before: Segment
  readonly corner: T
  readonly after: Segment
}

/**
 * The fillet of a corner: an arc of `radius` (millimetres) that touches two edges, lines or arcs, which meet
 * where `before` ends and `after` starts. Of the possible ones, that nearest to the corner on the side to
 * which the path turns. The edges are cut back to where it touches, perhaps to nothing.
 *
 * Fails with reason `no-radius` for a radius of nothing, `apart` when the edges do not meet, `smooth` when there
 * is no corner between them, and `no-room` when no such arc touches both edges within their length.
 *
 * Source: the centre is where the two edges, each offset by the radius, cross.
 */
export function fillet(before: Segment, after: Segment, radius: number, tag?: string): Outcome<Eased<Arc>> {
  const fail = (reason: string, facts: Record<string, number>) =>
    failure({ operation: 'fillet', reason, facts, input: { before, after, radius } })
  if (!(radius > coincident)) return fail('no-radius', { radius })
  const gap = distance(before.to, after.from)
  if (!(gap <= coincident)) return fail('apart', { gap })
  const u = tangentAt(before, 1)
  const v = tangentAt(after, 0)
  const turning = Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y)
  const shorter = Math.min(segmentLength(before), segmentLength(after))
  if (!(Math.abs(turning) * Math.min(shorter, radius) > coincident)) return fail('smooth', { turning })
  const turn = turning > 0 ? 1 : -1
  const corner = before.to
  let best: { centre: Point; from: Point; to: Point; away: number } | undefined
  for (const centre of crossings(offsetCarrier(before, turn * radius), offsetCarrier(after, turn * radius))) {
    const from = touching(before, centre, radius)
    const to = touching(after, centre, radius)
    if (from === undefined || to === undefined) continue
    const away = distance(centre, corner)
    if (best === undefined || away < best.away) best = { centre, from, to, away }
  }
  if (best === undefined) return fail('no-room', { radius, x: corner.x, y: corner.y })
  const { centre, from, to } = best
  return success({
    before: withEnds(before, before.from, from),
    corner: arcOf(from, to, centre, radius, turn, tag),
    after: withEnds(after, to, after.to),
  })
}

/**
 * The chamfer of a corner: a straight edge from `size` millimetres before the corner to as far after it, both
 * measured along the edges.
 *
 * Fails with reason `apart` when the edges do not meet, `no-size` for nothing to cut off, and `no-room` when an
 * edge is not longer than that.
 */
export function chamfer(before: Segment, after: Segment, size: number, tag?: string): Outcome<Eased<Line>> {
  const fail = (reason: string, facts: Record<string, number>) =>
    failure({ operation: 'chamfer', reason, facts, input: { before, after, size } })
  if (!(size > coincident)) return fail('no-size', { size })
  const gap = distance(before.to, after.from)
  if (!(gap <= coincident)) return fail('apart', { gap })
  const lengths = [segmentLength(before), segmentLength(after)] as const
  const room = Math.min(...lengths)
  if (!(room - size > coincident)) return fail('no-room', { size, room })
  const from = pointAt(before, 1 - size / lengths[0])
  const to = pointAt(after, size / lengths[1])
  return success({
    before: withEnds(before, before.from, from),
    corner: line(from, to, tag),
    after: withEnds(after, to, after.to),
  })
}

/** How one corner of a contour is eased: rounded by a fillet, or cut off by a chamfer; in millimetres. */
export type Easing = { readonly tag?: string } & ({ readonly radius: number } | { readonly chamfer: number })

/**
 * A closed contour with some of its corners eased. Corner i is where edge i starts; `easings[i]` says how, and
 * `undefined` leaves it as it is. An edge that its two corners use up within `coincident` disappears.
 *
 * Fails as {@link fillet} and {@link chamfer} do, with the fact `corner`; and with `corners-meet` where two
 * neighbours need more than the edge between them has.
 */
export function easeCorners(contour: Contour, easings: readonly (Easing | undefined)[]): Outcome<Contour> {
  const { segments } = contour
  const count = segments.length
  const cut: Segment[] = [...segments]
  const corners: (Segment | undefined)[] = new Array(count)
  const fail = (reason: string, facts: Readonly<Record<string, number | string>>) =>
    failure({ operation: 'easeCorners', reason, facts, input: { contour, easings } })
  for (let i = 0; i < count; i++) {
    const easing = easings[i]
    if (easing === undefined) continue
    const before = (i + count - 1) % count
    const eased =
      'radius' in easing
        ? fillet(segments[before]!, segments[i]!, easing.radius, easing.tag)
        : chamfer(segments[before]!, segments[i]!, easing.chamfer, easing.tag)
    if (!eased.ok) return fail(eased.fault.reason, { ...eased.fault.facts, corner: i })
    corners[i] = eased.value.corner
    cut[before] = { ...cut[before]!, to: eased.value.corner.from }
    cut[i] = { ...cut[i]!, from: eased.value.corner.to }
  }
  const usedUp = cut.map(edge => distance(edge.from, edge.to) <= coincident)
  for (let i = 0; i < count; i++) {
    // where an edge is gone its two corners share a point
    const next = corners[(i + 1) % count]
    if (usedUp[i] && next !== undefined) corners[(i + 1) % count] = { ...next, from: cut[i]!.from }
    if (!usedUp[i] && !runsForward(segments[i]!, cut[i]!)) return fail('corners-meet', { edge: i })
  }
  const made = cut.flatMap((edge, i): readonly Segment[] => {
    const corner = corners[i]
    return [...(corner === undefined ? [] : [corner]), ...(usedUp[i] ? [] : [edge])]
  })
  return success({ segments: made, closed: true })
}

/** Whether what is left of an edge still runs the way the edge did, and is no more than it was. */
function runsForward(whole: Segment, left: Segment): boolean {
  if (whole.kind === 'line') {
    const run = between(whole.from, whole.to)
    const rest = between(left.from, left.to)
    return run.x * rest.x + run.y * rest.y > 0
  }
  return segmentLength(left) <= segmentLength(whole) + coincident
}

type Carrier = { readonly from: Point; readonly to: Point } | Disc

/** The line or circle at a distance to the left of an edge. */
function offsetCarrier(s: Segment, left: number): Carrier {
  if (s.kind === 'arc') return { centre: s.centre, radius: Math.abs(s.radius - s.turn * left) }
  const normal = leftOf(tangentAt(s, 0))
  const move = (p: Point) => ({ x: p.x + normal.x * left, y: p.y + normal.y * left })
  return { from: move(s.from), to: move(s.to) }
}

function crossings(a: Carrier, b: Carrier): readonly Point[] {
  if ('centre' in a) {
    return 'centre' in b ? circleCircleCrossings(a, b) : lineCircleCrossings(b.from, b.to, a)
  }
  if ('centre' in b) return lineCircleCrossings(a.from, a.to, b)
  const p = lineLineCrossing(a.from, a.to, b.from, b.to)
  return p === undefined ? [] : [p]
}

/** Where a circle about `centre` that touches the edge's line or circle does so, if that is on the edge. */
function touching(s: Segment, centre: Point, radius: number): Point | undefined {
  const { point } = nearestOnSegment(s, centre)
  const foot = footOnCarrier(s, centre)
  const onEdge = distance(point, foot) <= coincident
  return onEdge && Math.abs(distance(foot, centre) - radius) <= coincident ? point : undefined
}

function footOnCarrier(s: Segment, p: Point): Point {
  if (s.kind === 'arc') {
    const scale = s.radius / distance(s.centre, p)
    return { x: s.centre.x + (p.x - s.centre.x) * scale, y: s.centre.y + (p.y - s.centre.y) * scale }
  }
  const u = tangentAt(s, 0)
  const along = (p.x - s.from.x) * u.x + (p.y - s.from.y) * u.y
  return { x: s.from.x + u.x * along, y: s.from.y + u.y * along }
}
