import { fillMark, pathMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { circle } from '../../geometry/shape/circle.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { polygon } from '../../geometry/shape/polygon.ts'

export const dimensionLines = { layer: 'dimension', subject: 'dimension' } as const

/** Length of an arrowhead and half its breadth: about 15° in all, as ISO 129-1 has it (from memory). */
export const arrowHead = { length: 2.4, half: 0.32 } as const
const originRadius = 1.1

/** Solid heads, each with its point and the unit vector that it points along. */
export function arrowHeads(heads: readonly { readonly tip: Point; readonly way: Point }[]): readonly Mark[] {
  if (heads.length === 0) return []
  const { length, half } = arrowHead
  return [
    fillMark(
      dimensionLines,
      heads.map(({ tip, way }) => ({
        outer: polygon([
          tip,
          { x: tip.x - way.x * length - way.y * half, y: tip.y - way.y * length + way.x * half },
          { x: tip.x - way.x * length + way.y * half, y: tip.y - way.y * length - way.x * half },
        ]),
        holes: [],
      })),
    ),
  ]
}

/** A dot where there is no room for an arrowhead. */
export function dimensionDots(at: readonly Point[]): readonly Mark[] {
  if (at.length === 0) return []
  return [
    fillMark(
      dimensionLines,
      at.map(p => ({ outer: circle(p, 0.45), holes: [] })),
    ),
  ]
}

/** The small circle where running dimensions start (ISO 129-1, from memory). */
export function originMark(at: Point): Mark {
  return pathMark(dimensionLines, 'thin', [circle(at, originRadius)])
}
