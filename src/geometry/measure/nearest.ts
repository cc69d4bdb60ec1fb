import { coincident } from '../../number/tolerance.ts'
import type { Contour, Region } from '../shape/contour.ts'
import { distance, type Point } from '../shape/point.ts'
import type { Arc, Line, Segment } from '../shape/segment.ts'
import { spans } from '../shape/span.ts'

/** A point and how far it is from what was asked about, in millimetres, never negative. */
export type Nearest = { readonly point: Point; readonly distance: number }

/** {@link Nearest} on a contour; `segment` counts from 0. */
export type NearestOnContour = Nearest & { readonly segment: number }

/** {@link Nearest} on the boundary of a region; `contour` 0 is the outer one, 1 the first hole. */
export type NearestOnRegion = NearestOnContour & { readonly contour: number }

/** The point of an edge that is nearest to `p`. From the centre of an arc all are: `from` is given. */
export function nearestOnSegment(s: Segment, p: Point): Nearest {
  return s.kind === 'line' ? nearestOnLine(s, p) : nearestOnArc(s, p)
}

/** The nearest point of a contour; of several the earliest. `undefined` when the contour has no edges. */
export function nearestOnContour(contour: Contour, p: Point): NearestOnContour | undefined {
  let best: NearestOnContour | undefined
  contour.segments.forEach((s, segment) => {
    const found = nearestOnSegment(s, p)
    if (best === undefined || found.distance < best.distance) best = { ...found, segment }
  })
  return best
}

/**
 * The nearest point of a region's boundary, its holes included, whether `p` lies inside or outside; of several
 * the earliest. `undefined` when the region has no edges.
 */
export function nearestOnRegion(region: Region, p: Point): NearestOnRegion | undefined {
  let best: NearestOnRegion | undefined
  ;[region.outer, ...region.holes].forEach((contour, i) => {
    const found = nearestOnContour(contour, p)
    if (found !== undefined && (best === undefined || found.distance < best.distance)) {
      best = { ...found, contour: i }
    }
  })
  return best
}

function nearestOnLine({ from, to }: Line, p: Point): Nearest {
  const dx = to.x - from.x
  const dy = to.y - from.y
  const square = dx * dx + dy * dy
  const at = ((p.x - from.x) * dx + (p.y - from.y) * dy) / square
  // a line as short as a coincidence has no direction to speak of
  if (!(at > 0 && at < 1 && square > coincident * coincident)) return nearerEnd(from, to, p)
  const foot = { x: from.x + dx * at, y: from.y + dy * at }
  // straight from the cross product: the foot carries a rounding of its own
  return { point: foot, distance: Math.abs((p.x - from.x) * dy - (p.y - from.y) * dx) / Math.sqrt(square) }
}

function nearestOnArc(a: Arc, p: Point): Nearest {
  const out = distance(a.centre, p)
  // nearer to the centre than this, the direction from there is rounding
  if (out > Number.EPSILON * a.radius && spans(a, p)) {
    const scale = a.radius / out
    const point = {
      x: a.centre.x + (p.x - a.centre.x) * scale,
      y: a.centre.y + (p.y - a.centre.y) * scale,
    }
    return { point, distance: Math.abs(out - a.radius) }
  }
  return nearerEnd(a.from, a.to, p)
}

function nearerEnd(from: Point, to: Point, p: Point): Nearest {
  const toFrom = distance(from, p)
  const toTo = distance(to, p)
  return toTo < toFrom ? { point: to, distance: toTo } : { point: from, distance: toFrom }
}
