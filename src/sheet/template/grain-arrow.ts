import { fillMark, linesMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { polygon } from '../../geometry/shape/polygon.ts'

const belongs = { layer: 'text', subject: 'grain' } as const
const head = { length: 3, half: 0.8 } as const

/** How far the arrow reaches across its own direction. */
export const grainArrowBreadth = 2 * head.half

/** An arrow with two heads about `middle`, along the grain. */
export function grainArrow(middle: Point, length: number, direction: 'along' | 'across'): readonly Mark[] {
  const at = (along: number, across: number): Point =>
    direction === 'along'
      ? { x: middle.x + along, y: middle.y + across }
      : { x: middle.x + across, y: middle.y + along }
  const tip = length / 2
  const arrowHead = (side: 1 | -1) => ({
    outer: polygon([
      at(side * tip, 0),
      at(side * (tip - head.length), head.half),
      at(side * (tip - head.length), -head.half),
    ]),
    holes: [],
  })
  return [
    linesMark(belongs, 'wide', [[at(-tip + head.length / 2, 0), at(tip - head.length / 2, 0)]]),
    fillMark(belongs, [arrowHead(1), arrowHead(-1)]),
  ]
}
