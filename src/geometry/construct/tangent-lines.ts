import { coincident } from '../../number/tolerance.ts'
import type { Disc } from '../measure/carrier.ts'
import { distance } from '../shape/point.ts'
import { type Line, line } from '../shape/segment.ts'

/**
 * A line that touches two circles, from the first to the second. `outer` ones keep both circles on one side,
 * `inner` ones pass between them. `side` is where the first circle lies as one goes along the line.
 */
export type TangentLine = {
  readonly line: Line
  readonly kind: 'outer' | 'inner'
  readonly side: 'left' | 'right'
}

/**
 * The lines that touch two circles: four when they are apart, down to none when one lies in the other. A
 * radius of 0 stands for a point. Where the circles touch (within `coincident`) the tangent has no length and
 * is left out.
 *
 * Source: seen along the tangent the centres differ by r₁ ∓ r₂ across it, which fixes its direction.
 */
export function tangentLines(a: Disc, b: Disc): readonly TangentLine[] {
  const apart = distance(a.centre, b.centre)
  if (!(apart > coincident)) return []
  const ux = (b.centre.x - a.centre.x) / apart
  const uy = (b.centre.y - a.centre.y) / apart
  const found: TangentLine[] = []
  for (const kind of ['outer', 'inner'] as const) {
    if (kind === 'inner' && (a.radius === 0 || b.radius === 0)) continue
    const toSecond = kind === 'outer' ? b.radius : -b.radius
    const cos = (a.radius - toSecond) / apart
    if (!(apart - Math.abs(a.radius - toSecond) > coincident)) continue
    const sin = Math.sqrt((1 - cos) * (1 + cos))
    for (const side of ['left', 'right'] as const) {
      // from the first centre to where the line touches: to its right when the circle is to the left
      const across = side === 'left' ? -sin : sin
      const nx = ux * cos - uy * across
      const ny = uy * cos + ux * across
      const from = { x: a.centre.x + nx * a.radius, y: a.centre.y + ny * a.radius }
      const to = { x: b.centre.x + nx * toSecond, y: b.centre.y + ny * toSecond }
      if (distance(from, to) > coincident) found.push({ line: line(from, to), kind, side })
    }
    if (a.radius === 0 && b.radius === 0) return found.slice(0, 1)
  }
  return found
}
