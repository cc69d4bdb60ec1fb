import { distance, type Point } from '../shape/point.ts'

/**
 * The farthest that any point of a square can be from all `marks` at once, that is, the greatest distance to
 * the nearest of them, in millimetres. Within the marks' Voronoi cells the distance grows outward, so it is
 * greatest at a corner of a cell cut by the square.
 */
export function farthestFromMarks(centre: Point, half: number, marks: readonly Point[]): number {
  const square = [
    { x: centre.x - half, y: centre.y - half },
    { x: centre.x + half, y: centre.y - half },
    { x: centre.x + half, y: centre.y + half },
    { x: centre.x - half, y: centre.y + half },
  ]
  let most = 0
  for (const mark of marks) {
    let cell: readonly Point[] = square
    for (const other of marks) if (other !== mark) cell = nearerTo(cell, mark, other)
    for (const corner of cell) most = Math.max(most, distance(corner, mark))
  }
  return most
}

/** The part of a convex polygon that is nearer to `mark` than to `other`. */
function nearerTo(cell: readonly Point[], mark: Point, other: Point): readonly Point[] {
  const dx = other.x - mark.x
  const dy = other.y - mark.y
  if (dx === 0 && dy === 0) return cell
  const mx = (mark.x + other.x) / 2
  const my = (mark.y + other.y) / 2
  const beyond = (p: Point) => (p.x - mx) * dx + (p.y - my) * dy
  const kept: Point[] = []
  cell.forEach((p, i) => {
    const q = cell[(i + 1) % cell.length]!
    const atP = beyond(p)
    const atQ = beyond(q)
    if (atP <= 0) kept.push(p)
    if (atP < 0 !== atQ < 0 && atP !== atQ) {
      const t = atP / (atP - atQ)
      if (t > 0 && t < 1) kept.push({ x: p.x + (q.x - p.x) * t, y: p.y + (q.y - p.y) * t })
    }
  })
  return kept
}
