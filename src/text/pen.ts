import type { Point } from '../geometry/shape/point.ts'
import type { Outline, OutlineStep } from './outline.ts'

/** A straight stroke of the pen with square ends, counter-clockwise. */
export function bar(from: Point, to: Point, width: number): Outline {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const x = (-(to.y - from.y) / length) * (width / 2)
  const y = ((to.x - from.x) / length) * (width / 2)
  return polygon([
    { x: from.x - x, y: from.y - y },
    { x: to.x - x, y: to.y - y },
    { x: to.x + x, y: to.y + y },
    { x: from.x + x, y: from.y + y },
  ])
}

function polygon(corners: readonly Point[]): Outline {
  return [
    ...corners.map((to, i): OutlineStep => ({ kind: i === 0 ? 'move' : 'line', to })),
    { kind: 'close' },
  ]
}

/** A round stroke of the pen: the outer circle runs counter-clockwise, the inner one the other way. */
export function ring(centre: Point, radius: number, width: number): Outline {
  return [...round(centre, radius + width / 2, 1), ...round(centre, radius - width / 2, -1)]
}

/** Four cubic curves; for lettering their error of 0.03 % of the radius is nothing. */
function round(centre: Point, radius: number, turn: 1 | -1): Outline {
  const handle = (4 / 3) * Math.tan(Math.PI / 8)
  const at = (u: number, v: number): Point => ({ x: centre.x + radius * u, y: centre.y + turn * radius * v })
  const quarter = (ux: number, uy: number, vx: number, vy: number): OutlineStep => ({
    kind: 'cubic',
    control1: at(ux + handle * vx, uy + handle * vy),
    control2: at(vx + handle * ux, vy + handle * uy),
    to: at(vx, vy),
  })
  return [
    { kind: 'move', to: at(1, 0) },
    quarter(1, 0, 0, 1),
    quarter(0, 1, -1, 0),
    quarter(-1, 0, 0, -1),
    quarter(0, -1, 1, 0),
    { kind: 'close' },
  ]
}
