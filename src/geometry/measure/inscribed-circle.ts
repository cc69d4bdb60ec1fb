import type { Region } from '../shape/contour.ts'
import type { Point } from '../shape/point.ts'
import { regionBounds } from './bounds.ts'
import type { Disc } from './carrier.ts'
import { heap } from './heap.ts'
import { farthestFromMarks } from './inscribed-bound.ts'
import { polishCentre } from './inscribed-polish.ts'
import { leadsLeft, leftOfCorner } from './left-side.ts'
import { nearestOnSegment } from './nearest.ts'
import { orientRegion } from './orient.ts'
import { type NearestEdge, nearestInTree, type SegmentTree, segmentTree, someInBox } from './segment-tree.ts'

/** A part of the plane still to be looked at, and boundary points near it. */
type Square = { readonly centre: Point; readonly half: number; readonly marks: readonly Point[] }

/**
 * The largest circle that fits into a region, between its outer contour and its holes. No circle in the region
 * is larger by more than `maxDeviation` (millimetres); the one given touches the boundary to the last digits.
 * Of several equally large circles (in a slot, say) one is given. `undefined` for a region without area.
 *
 * Source: branch and bound over a quadtree, each square bounded by the Voronoi cells of boundary points.
 *
 * @throws RangeError when `maxDeviation` is not positive
 */
export function inscribedCircle(region: Region, maxDeviation: number): Disc | undefined {
  if (!(maxDeviation > 0)) throw new RangeError('a deviation is more than nothing')
  const { outer, holes } = orientRegion(region)
  const contours = [outer, ...holes]
  const tree = segmentTree(contours)
  const before = contours.flatMap(({ segments }) => segments.map((_, i) => segments.at(i - 1)!))
  const after = contours.flatMap(({ segments }) =>
    segments.map((_, i) => segments[(i + 1) % segments.length]!),
  )
  const { left, bottom, right, top } = regionBounds(region)
  if (!(right > left && top > bottom)) return undefined

  let best: Disc | undefined
  /** Decided where the boundary is nearest; a ray would meet every tooth of a comb. */
  const isInside = (p: Point, { edge, point }: NearestEdge) => {
    const s = tree.segments[edge]!
    if (point === s.from) return leftOfCorner(before[edge]!, s, p)
    return point === s.to ? leftOfCorner(s, after[edge]!, p) : leadsLeft(s, point, p)
  }
  const radiusAt = (p: Point) => {
    const near = nearestInTree(tree, p)!
    return isInside(p, near) ? near.distance : -near.distance
  }
  const offer = (centre: Point, radius: number) => {
    if (!(radius > (best?.radius ?? 0))) return
    const polished = polishCentre(centre, radius, (p, reach) => contactsWithin(tree, p, reach), radiusAt)
    best = { centre: polished, radius: radiusAt(polished) }
  }

  const squares = heap<Square>()
  const add = (centre: Point, half: number, known: readonly Point[]) => {
    const near = nearestInTree(tree, centre)!
    const { point, distance } = near
    if (isInside(centre, near)) offer(centre, distance)
    else if (distance > half * Math.SQRT2) return
    const wanted = (best?.radius ?? 0) + maxDeviation
    // what costs nothing first: it often settles the matter
    if (distance + half * Math.SQRT2 <= wanted) return
    if (farthestFromMarks(centre, half, [point, ...known]) <= wanted) return
    const corners = [
      { x: centre.x - half, y: centre.y - half },
      { x: centre.x + half, y: centre.y - half },
      { x: centre.x + half, y: centre.y + half },
      { x: centre.x - half, y: centre.y + half },
    ]
    const marks = [point, ...corners.map(c => nearestInTree(tree, c)!.point)]
    const bound = farthestFromMarks(centre, half, marks)
    if (bound > wanted) squares.add(bound, { centre, half, marks })
  }
  const half = Math.max(right - left, top - bottom) / 2
  add({ x: (left + right) / 2, y: (bottom + top) / 2 }, half, [])
  for (;;) {
    const next = squares.take()
    if (next === undefined || next.rank <= (best?.radius ?? 0) + maxDeviation) return best
    const { centre, half, marks } = next.value
    const quarter = half / 2
    // the squares shrink below the deviation asked for, so there is an end to them
    for (const dx of [-quarter, quarter]) {
      for (const dy of [-quarter, quarter]) {
        add({ x: centre.x + dx, y: centre.y + dy }, quarter, marks)
      }
    }
  }
}

/** Nearest points, one an edge, of the edges that are hardly farther from `p` than the nearest of all. */
function contactsWithin(tree: SegmentTree, p: Point, reach: number): readonly Point[] {
  const limit = nearestInTree(tree, p)!.distance + reach
  const box = { left: p.x - limit, bottom: p.y - limit, right: p.x + limit, top: p.y + limit }
  const found: { point: Point; distance: number }[] = []
  someInBox(tree, box, edge => {
    const near = nearestOnSegment(tree.segments[edge]!, p)
    if (near.distance <= limit) found.push(near)
    return false
  })
  return found.toSorted((a, b) => a.distance - b.distance).map(near => near.point)
}
