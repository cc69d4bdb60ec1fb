import type { Point } from '../../src/geometry/shape/point.ts'
import type { Exact } from '../readback/exact.ts'
import type { Ellipse } from './exact-template.ts'

/** How far a point may be from an ellipse at the most: what it is off the circle that the ellipse is a long view of, drawn out as far. */
export function offEllipse({ centre, long, short, angle }: Ellipse, { x, y }: Point): number {
  const along = (x - centre.x) * Math.cos(angle) + (y - centre.y) * Math.sin(angle)
  const across = (y - centre.y) * Math.cos(angle) - (x - centre.x) * Math.sin(angle)
  return (Math.abs(Math.hypot((along * short) / long, across) - short) * long) / short
}

/** The whole of it, as the other lines of a template are. */
export function exactEllipse(ellipse: Ellipse): Exact {
  const { centre, long, short, angle } = ellipse
  const at = (t: number): Point => {
    const along = long * Math.cos(2 * Math.PI * t)
    const across = short * Math.sin(2 * Math.PI * t)
    return {
      x: centre.x + along * Math.cos(angle) - across * Math.sin(angle),
      y: centre.y + along * Math.sin(angle) + across * Math.cos(angle),
    }
  }
  return { edges: [{ kind: 'curve', at, distance: p => offEllipse(ellipse, p) }], closed: true }
}
