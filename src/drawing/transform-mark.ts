import { apply, type Matrix, shift } from '../geometry/shape/matrix.ts'
import { transformContour, transformRegion } from '../geometry/shape/transform.ts'
import { fillMark, pathMark, textMark } from './make-mark.ts'
import type { Mark } from './mark.ts'

/** A mark at another place; `matrix` is a shift with a turn, and lettering turns with it. */
export function transformMark(mark: Mark, matrix: Matrix): Mark {
  switch (mark.kind) {
    case 'path':
      return pathMark(
        mark,
        mark.role,
        mark.contours.map(contour => transformContour(contour, matrix)),
      )
    case 'fill':
      return fillMark(
        mark,
        mark.regions.map(region => transformRegion(region, matrix)),
      )
    case 'text':
      return textMark(mark, mark.words, apply(matrix, mark.at), mark.height, {
        align: mark.align,
        angle: mark.angle + Math.atan2(matrix.b, matrix.a),
        weight: mark.weight,
      })
  }
}

/** A mark so many millimetres to the right and up. */
export function moveMark(mark: Mark, right: number, up: number): Mark {
  return right === 0 && up === 0 ? mark : transformMark(mark, shift(right, up))
}
