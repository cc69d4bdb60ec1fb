import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Edge, Obstacles } from './obstacles.ts'
import {
  boxesOverlap,
  boxMeetsSegment,
  boxMeetsStretch,
  type Stretch,
  stretchBounds,
  stretchMeets,
} from './touch.ts'

export function grown(box: Bounds, by: number): Bounds {
  return { left: box.left - by, bottom: box.bottom - by, right: box.right + by, top: box.top + by }
}

/** Whether a box touches no line and no other box. */
export function isClear(box: Bounds, obstacles: Obstacles): boolean {
  return (
    !obstacles.boxes.some(box, other => boxesOverlap(box, other)) && !meetsEdge(box, obstacles, () => true)
  )
}

/** Whether a box touches one of the lines that `concern` it. */
export function meetsEdge(box: Bounds, { edges }: Obstacles, concerns: (edge: Edge) => boolean): boolean {
  return edges.some(
    box,
    edge => touch(box, edge.bounds) && concerns(edge) && boxMeetsSegment(box, edge.segment),
  )
}

/** Whether a leader runs into lettering that stands already. */
export function meetsLettering(leader: Stretch, { boxes }: Obstacles): boolean {
  return boxes.some(stretchBounds(leader), box => boxMeetsStretch(box, ...leader))
}

/** How many lines and arcs a leader crosses; counting ends at `most`. */
export function crossings(leader: Stretch, { edges }: Obstacles, most: number): number {
  const crossed = new Set<Edge>()
  const bounds = stretchBounds(leader)
  edges.some(bounds, edge => {
    if (touch(bounds, edge.bounds) && stretchMeets(leader, edge.segment)) crossed.add(edge)
    return crossed.size >= most
  })
  return crossed.size
}

function touch(a: Bounds, b: Bounds): boolean {
  return a.left <= b.right && b.left <= a.right && a.bottom <= b.top && b.bottom <= a.top
}
