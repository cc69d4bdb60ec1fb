import { linesMark, pathMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { circle } from '../../geometry/shape/circle.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { polygon } from '../../geometry/shape/polygon.ts'

/** Diameters of the cone's ends, and its length, in millimetres; and what the symbol takes with its centre lines. */
const small = 3.5
const large = 7
const length = 7
const apart = 3.5
const beyond = 1.5
export const projectionSymbolExtent = {
  width: length + apart + large + 2 * beyond,
  height: large + 2 * beyond,
} as const

/**
 * The truncated cone from aside and from its small end, which lies at the left: seen from there, it stands at the left of the view
 * from aside in third angle, at the right in first angle. ISO 5456-2, from memory.
 *
 * @param at the symbol's upper left corner
 */
export function projectionSymbol(projection: 'third' | 'first', at: Point): readonly Mark[] {
  const belongs = { layer: 'text', subject: 'projection' } as const
  const y = at.y - projectionSymbolExtent.height / 2
  const left = at.x + beyond
  const end = left + (projection === 'third' ? large / 2 : length + apart + large / 2)
  const cone = left + (projection === 'third' ? large + apart : 0)
  const outline = polygon([
    { x: cone, y: y - small / 2 },
    { x: cone + length, y: y - large / 2 },
    { x: cone + length, y: y + large / 2 },
    { x: cone, y: y + small / 2 },
  ])
  const centre = { x: end, y }
  const reach = large / 2 + beyond
  return [
    pathMark(belongs, 'wide', [outline, circle(centre, small / 2), circle(centre, large / 2)]),
    linesMark(belongs, 'thin', [
      [
        { x: cone - beyond, y },
        { x: cone + length + beyond, y },
      ],
      [
        { x: end - reach, y },
        { x: end + reach, y },
      ],
      [
        { x: end, y: y - reach },
        { x: end, y: y + reach },
      ],
    ]),
  ]
}
