import { splitEvenly } from '../../geometry/cut/split.ts'
import { segmentBounds } from '../../geometry/measure/bounds.ts'
import { segmentLength } from '../../geometry/measure/length.ts'
import type { Bounds, Contour } from '../../geometry/shape/contour.ts'
import type { Segment } from '../../geometry/shape/segment.ts'
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
    for (const whole of contour.segments) {
      // no longer than a cell, so that a long slanting line does not stand in every cell of its rectangle
      for (const segment of splitEvenly(whole, Math.ceil(segmentLength(whole) / cellSize))) {
        const bounds = segmentBounds(segment)
        edges.add(bounds, { segment, bounds, ...belongs })
      }
    }
  }
}

export function addBox({ boxes }: Obstacles, box: Bounds): void {
  boxes.add(box, box)
}
