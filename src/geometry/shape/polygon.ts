import type { Contour } from './contour.ts'
import type { Point } from './point.ts'
import { line, type Segment } from './segment.ts'

/**
 * The closed contour of straight edges through `corners`, in their order and back to the first. Edge i leaves
 * corner i and takes `tags[i]`.
 *
 * @throws RangeError for fewer than two corners: a fault of the caller
 */
export function polygon(corners: readonly Point[], tags: readonly (string | undefined)[] = []): Contour {
  return { segments: edges(corners, tags, corners.length), closed: true }
}

/**
 * The open path of straight edges through `points`. Edge i leaves point i and takes `tags[i]`.
 *
 * @throws RangeError for fewer than two points: a fault of the caller
 */
export function polyline(points: readonly Point[], tags: readonly (string | undefined)[] = []): Contour {
  return { segments: edges(points, tags, points.length - 1), closed: false }
}

function edges(points: readonly Point[], tags: readonly (string | undefined)[], count: number): Segment[] {
  if (points.length < 2) throw new RangeError('a contour goes through at least two points')
  return Array.from({ length: count }, (_, i) => line(points[i]!, points[(i + 1) % points.length]!, tags[i]))
}
