import type { Region } from '../../../src/geometry/shape/contour.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { arc, line, type Segment } from '../../../src/geometry/shape/segment.ts'
import { closed, solid } from './solid.ts'

/** What lies between two arcs from a to b, bulging to the right of a → b by the two sagittas, larger first. */
export function crescent(a: Point, b: Point, outerSagitta: number, innerSagitta: number): Region {
  return solid(closed([bow(a, b, outerSagitta), bow(b, a, -innerSagitta)]))
}

/** The arc from a to b that bulges to the right of its chord by a sagitta; negative: to the left; 0: a line. */
export function bow(a: Point, b: Point, sagitta: number): Segment {
  if (sagitta === 0) return line(a, b)
  const dx = b.x - a.x
  const dy = b.y - a.y
  const chord = Math.hypot(dx, dy)
  const radius = (chord * chord) / (8 * sagitta) + sagitta / 2
  const inward = (radius - sagitta) / chord
  const centre = { x: (a.x + b.x) / 2 - inward * dy, y: (a.y + b.y) / 2 + inward * dx }
  return arc(a, b, centre, sagitta > 0 ? 1 : -1)
}

/** A convex or star-shaped outline whose edges are lines and bows. */
export function bowed(points: readonly Point[], sagittaAt: (i: number) => number): Region {
  return solid(closed(points.map((p, i) => bow(p, points[(i + 1) % points.length]!, sagittaAt(i)))))
}
