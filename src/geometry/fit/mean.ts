import type { Point } from '../shape/point.ts'

/** The mean of some points, their centre of gravity. */
export function meanPoint(points: readonly Point[]): Point {
  let x = 0
  let y = 0
  for (const p of points) {
    x += p.x
    y += p.y
  }
  return { x: x / points.length, y: y / points.length }
}
