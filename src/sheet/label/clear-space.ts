import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { boundsOf, type Obstacles, type Stretch } from './obstacles.ts'

export function grown(box: Bounds, by: number): Bounds {
  return { left: box.left - by, bottom: box.bottom - by, right: box.right + by, top: box.top + by }
}

/** Whether a box touches no line and no other box. */
export function isClear(box: Bounds, obstacles: Obstacles): boolean {
  for (const { stretches, boxes } of obstacles.near(box)) {
    if (boxes.some(other => overlap(box, other))) return false
    if (stretches.some(stretch => shareWithin(box, stretch) !== undefined)) return false
  }
  return true
}

/** Whether a stretch meets any box; with `lines` also whether it crosses any line. */
export function isCrossed(stretch: Stretch, obstacles: Obstacles, lines: boolean): boolean {
  for (const { stretches, boxes } of obstacles.near(boundsOf(stretch))) {
    if (boxes.some(box => shareWithin(box, stretch) !== undefined)) return true
    if (lines && stretches.some(other => cross(stretch, other))) return true
  }
  return false
}

function cross([a, b]: Stretch, [p, q]: Stretch): boolean {
  return leftOf(a, b, p) !== leftOf(a, b, q) && leftOf(p, q, a) !== leftOf(p, q, b)
}

/** Lettering may be a hair off; nothing that is cut hangs on this sign. */
function leftOf(p: Point, q: Point, r: Point): boolean {
  return (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x) > 0
}

function overlap(a: Bounds, b: Bounds): boolean {
  return a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top
}

/** Between which shares of its length a stretch lies in the box, its border included; nothing where it does not. */
export function shareWithin(box: Bounds, [a, b]: Stretch): readonly [number, number] | undefined {
  let from = 0
  let to = 1
  const cut = (start: number, change: number, low: number, high: number): boolean => {
    if (change === 0) return start >= low && start <= high
    const first = (low - start) / change
    const second = (high - start) / change
    from = Math.max(from, Math.min(first, second))
    to = Math.min(to, Math.max(first, second))
    return from <= to
  }
  const meets = cut(a.x, b.x - a.x, box.left, box.right) && cut(a.y, b.y - a.y, box.bottom, box.top)
  return meets ? [from, to] : undefined
}
