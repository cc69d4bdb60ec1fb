import { pointAt } from '../../geometry/measure/along.ts'
import { segmentBounds } from '../../geometry/measure/bounds.ts'
import { segmentLength } from '../../geometry/measure/length.ts'
import type { Bounds, Contour } from '../../geometry/shape/contour.ts'
import { type Segment, withEnds } from '../../geometry/shape/segment.ts'
import { cellSize, emptyGrid, type Grid } from './grid.ts'

/** A line or arc, and what it belongs to. */
export type Edge = { readonly segment: Segment; readonly bounds: Bounds; readonly subject?: string }

/** What lettering has to keep clear of: lines and arcs as they are drawn, and boxes of lettering that stands already. */
export type Obstacles = { readonly edges: Grid<Edge>; readonly boxes: Grid<Bounds> }

export function emptyObstacles(): Obstacles {
  return { edges: emptyGrid(), boxes: emptyGrid() }
}

export function addContours({ edges }: Obstacles, contours: readonly Contour[], subject?: string): void {
  const belongs = subject === undefined ? {} : { subject }
  for (const contour of contours) {
    for (const segment of contour.segments.flatMap(pieces)) {
      const bounds = segmentBounds(segment)
      edges.add(bounds, { segment, bounds, ...belongs })
    }
  }
}

export function addBox({ boxes }: Obstacles, box: Bounds): void {
  boxes.add(box, box)
}

/** No longer than a cell, so that a long slanting line does not stand in every cell of its rectangle. */
function pieces(segment: Segment): readonly Segment[] {
  const count = Math.max(1, Math.ceil(segmentLength(segment) / cellSize))
  if (count === 1) return [segment]
  const ends = Array.from({ length: count + 1 }, (_, i) => pointAt(segment, i / count))
  return ends.slice(1).map((to, i) => withEnds(segment, ends[i]!, to))
}
