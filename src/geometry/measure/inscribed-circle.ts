import type { Region } from '../shape/contour.ts'
import type { Point } from '../shape/point.ts'
import { regionBounds } from './bounds.ts'
import type { Disc } from './carrier.ts'
import { heap } from './heap.ts'
import { farthestFromMarks } from './inscribed-bound.ts'
import { polishCentre } from './inscribed-polish.ts'
import { nearestOnSegment } from './nearest.ts'
import { insideTree, nearestInTree, type SegmentTree, segmentTree, someInBox } from './segment-tree.ts'

type Square = { readonly centre: Point; readonly half: number }

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
  const tree = segmentTree([region.outer, ...region.holes])
  const { left, bottom, right, top } = regionBounds(region)
  if (!(right > left && top > bottom)) return undefined

  let best: Disc | undefined
  const radiusAt = (p: Point) => {
    const away = nearestInTree(tree, p)!.distance
    return insideTree(tree, p) ? away : -away
  }
  const offer = (centre: Point, radius: number) => {
    if (!(radius > (best?.radius ?? 0))) return
    const polished = polishCentre(centre, radius, (p, reach) => contactsWithin(tree, p, reach), radiusAt)
    best = { centre: polished, radius: radiusAt(polished) }
  }

  const squares = heap<Square>()
  const add = (square: Square) => {
    const { centre, half } = square
    const { point, distance } = nearestInTree(tree, centre)!
    const inside = insideTree(tree, centre)
    if (inside) offer(centre, distance)
    else if (distance > half * Math.SQRT2) return
    const wanted = (best?.radius ?? 0) + maxDeviation
    // the plain bound first: it often settles the matter
    if (distance + half * Math.SQRT2 <= wanted) return
    const corners = [
      { x: centre.x - half, y: centre.y - half },
      { x: centre.x + half, y: centre.y - half },
      { x: centre.x + half, y: centre.y + half },
      { x: centre.x - half, y: centre.y + half },
    ]
    const marks = [point, ...corners.map(c => nearestInTree(tree, c)!.point)]
    const bound = farthestFromMarks(centre, half, marks)
    if (bound > wanted) squares.add(bound, square)
  }
  const half = Math.max(right - left, top - bottom) / 2
  add({ centre: { x: (left + right) / 2, y: (bottom + top) / 2 }, half })
  for (;;) {
    const next = squares.take()
    if (next === undefined || next.rank <= (best?.radius ?? 0) + maxDeviation) return best
    const { centre } = next.value
    const quarter = next.value.half / 2
    // the squares shrink below the deviation asked for, so there is an end to them
    for (const dx of [-quarter, quarter]) {
      for (const dy of [-quarter, quarter]) {
        add({ centre: { x: centre.x + dx, y: centre.y + dy }, half: quarter })
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
