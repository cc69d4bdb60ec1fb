import { coincident } from '../../number/tolerance.ts'
import { buildBoxTree, visitPairs } from '../boolean/box-tree.ts'
import { addSegment, addVertex, createPack, type Pack } from '../boolean/pack.ts'
import { meetings } from '../intersect/segments.ts'
import { signedArea } from '../measure/area.ts'
import { segmentBounds } from '../measure/bounds.ts'
import { segmentLength } from '../measure/length.ts'
import type { Contour } from '../shape/contour.ts'
import { distance, type Point } from '../shape/point.ts'
import type { Segment } from '../shape/segment.ts'

/** A segment of one of several contours, both counted from 0. */
export type SegmentPlace = { readonly contour: number; readonly segment: number }

/** The end of a segment that lies away from the start of the next, by `size` mm. */
export type Gap = SegmentPlace & { readonly from: Point; readonly to: Point; readonly size: number }

/** Where two segments meet that should not. `cross`: they pass through each other; `touch`: they only meet. */
export type Crossing = {
  readonly kind: 'cross' | 'touch'
  readonly segments: readonly [SegmentPlace, SegmentPlace]
  readonly point: Point
}

/** A stretch along which two segments run together. */
export type Doubling = {
  readonly segments: readonly [SegmentPlace, SegmentPlace]
  readonly from: Point
  readonly to: Point
}

/** What {@link contourFacts} finds. */
export type ContourFacts = {
  readonly gaps: readonly Gap[]
  /** Segments no longer than `coincident`. */
  readonly zeroLength: readonly SegmentPlace[]
  readonly crossings: readonly Crossing[]
  readonly doubled: readonly Doubling[]
  /** Which way each closed contour runs: `left` is counter-clockwise, `none` for an open one or one without area. */
  readonly directions: readonly ('left' | 'right' | 'none')[]
}

/**
 * What there is to know about contours before they are trusted as the outline of something. Says what is there;
 * whether that is a fault is for the caller to judge.
 */
export function contourFacts(contours: readonly Contour[]): ContourFacts {
  const gaps: Gap[] = []
  const zeroLength: SegmentPlace[] = []
  contours.forEach(({ segments, closed }, contour) => {
    segments.forEach((s, segment) => {
      if (segmentLength(s) <= coincident) zeroLength.push({ contour, segment })
      const last = segment + 1 === segments.length
      if (last && !closed) return
      const next = segments[last ? 0 : segment + 1]!.from
      const size = distance(s.to, next)
      if (size > coincident) gaps.push({ contour, segment, from: s.to, to: next, size })
    })
  })
  const directions = contours.map(c => {
    const area = c.closed ? signedArea(c) : 0
    return area > 0 ? 'left' : area < 0 ? 'right' : 'none'
  })
  return { gaps, zeroLength, directions, ...findMeetings(contours) }
}

function findMeetings(contours: readonly Contour[]): Pick<ContourFacts, 'crossings' | 'doubled'> {
  const places: SegmentPlace[] = []
  const segments: Segment[] = []
  contours.forEach((c, contour) => {
    c.segments.forEach((s, segment) => {
      places.push({ contour, segment })
      segments.push(s)
    })
  })
  const crossings: (Crossing & { readonly order: number })[] = []
  const doubled: (Doubling & { readonly order: number })[] = []
  visitPairs(buildBoxTree(boxesOf(contours, segments), coincident), (p, q) => {
    const [i, j] = p < q ? [p, q] : [q, p]
    const pair = [places[i]!, places[j]!] as const
    const order = i * segments.length + j
    const shared = sharedEnds(contours, pair)
    for (const m of meetings(segments[i]!, segments[j]!)) {
      if (m.kind === 'overlap') doubled.push({ segments: pair, from: m.from, to: m.to, order })
      else if (!shared.some(end => distance(end, m.point) <= coincident)) {
        crossings.push({ kind: m.kind, segments: pair, point: m.point, order })
      }
    }
  })
  const inOrder = <T extends { readonly order: number }>(list: T[]) =>
    list.sort((a, b) => a.order - b.order).map(({ order: _, ...rest }) => rest)
  return { crossings: inOrder(crossings), doubled: inOrder(doubled) }
}

/** The points that two segments share because they follow each other in a contour. */
function sharedEnds(contours: readonly Contour[], [a, b]: readonly [SegmentPlace, SegmentPlace]): Point[] {
  if (a.contour !== b.contour) return []
  const { segments, closed } = contours[a.contour]!
  const shared: Point[] = []
  if (a.segment + 1 === b.segment) shared.push(segments[a.segment]!.to)
  if (closed && a.segment === 0 && b.segment + 1 === segments.length) shared.push(segments[0]!.from)
  return shared
}

/** The segments as upright diagonals of their bounds: all that the tree of boxes looks at. */
function boxesOf(contours: readonly Contour[], segments: readonly Segment[]): Pack {
  const pack = createPack(segments.length)
  let at = 0
  for (const c of contours) {
    pack.contourStart.push(at)
    at += c.segments.length
  }
  for (const s of segments) {
    const { left, bottom, right, top } = segmentBounds(s)
    addSegment(pack, addVertex(pack, left, bottom), addVertex(pack, right, top), 0, 0, 0, 0, 0, 0, 0)
  }
  return pack
}
