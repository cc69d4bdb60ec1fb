import { coincident } from '../../number/tolerance.ts'
import { meetings } from '../intersect/segments.ts'
import { pointAt } from '../measure/along.ts'
import { segmentBounds } from '../measure/bounds.ts'
import { pointInRegion, type Side } from '../measure/inside.ts'
import type { Bounds, Contour, Region } from '../shape/contour.ts'
import { distance, type Point } from '../shape/point.ts'
import type { Segment } from '../shape/segment.ts'
import { splitAt } from './split.ts'

/** A path in pieces, every piece an open path in the path's own direction; `on` runs along the boundary. */
export type ClippedPath = {
  readonly inside: readonly Contour[]
  readonly outside: readonly Contour[]
  readonly on: readonly Contour[]
}

/**
 * Paths cut by regions: hatching lines, for instance. A path that closes is cut like one that does not; a piece
 * that would go through its start is two. What lies in several regions counts as inside, and within `coincident`
 * of a boundary as on it.
 */
export function clipPaths(paths: readonly Contour[], regions: readonly Region[]): readonly ClippedPath[] {
  const edges: Edge[] = regions.flatMap(r =>
    [r.outer, ...r.holes].flatMap(c =>
      c.segments.map(segment => ({ segment, bounds: segmentBounds(segment) })),
    ),
  )
  return paths.map(path => clipPath(path, regions, edges))
}

type Edge = { readonly segment: Segment; readonly bounds: Bounds }

function clipPath(path: Contour, regions: readonly Region[], edges: readonly Edge[]): ClippedPath {
  const pieces: Record<Side, Segment[][]> = { inside: [], outside: [], on: [] }
  let running: Side | undefined
  for (const segment of path.segments) {
    for (const piece of splitAt(segment, cuts(segment, edges))) {
      const side = sideOf(pointAt(piece, 0.5), regions)
      if (side === running) pieces[side].at(-1)!.push(piece)
      else pieces[side].push([piece])
      running = side
    }
  }
  const open = (lists: Segment[][]) => lists.map((segments): Contour => ({ segments, closed: false }))
  return { inside: open(pieces.inside), outside: open(pieces.outside), on: open(pieces.on) }
}

/** The points between its ends at which an edge meets others, in its order, no two of them one. */
function cuts(segment: Segment, edges: readonly Edge[]): Point[] {
  const box = segmentBounds(segment)
  const found: { at: number; point: Point }[] = []
  for (const { segment: edge, bounds } of edges) {
    if (!near(box, bounds)) continue
    for (const m of meetings(segment, edge)) {
      if (m.kind === 'overlap') {
        found.push({ at: m.onFirst[0], point: m.from }, { at: m.onFirst[1], point: m.to })
      } else found.push({ at: m.onFirst, point: m.point })
    }
  }
  found.sort((p, q) => p.at - q.at)
  const points: Point[] = []
  for (const { point } of found) {
    const before = points.at(-1) ?? segment.from
    if (distance(before, point) > coincident && distance(point, segment.to) > coincident) points.push(point)
  }
  return points
}

function near(a: Bounds, b: Bounds): boolean {
  return (
    a.left <= b.right + coincident &&
    b.left <= a.right + coincident &&
    a.bottom <= b.top + coincident &&
    b.bottom <= a.top + coincident
  )
}

function sideOf(p: Point, regions: readonly Region[]): Side {
  let side: Side = 'outside'
  for (const region of regions) {
    const here = pointInRegion(region, p)
    if (here === 'inside') return 'inside'
    if (here === 'on') side = 'on'
  }
  return side
}
