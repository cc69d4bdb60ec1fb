import { apply, type Matrix, shift } from '../geometry/shape/matrix.ts'
import { transformContour, transformRegion } from '../geometry/shape/transform.ts'
import type { Mark } from './mark.ts'

/** A mark at another place; `matrix` is a shift with a turn, and lettering turns with it. */
export function transformMark(mark: Mark, matrix: Matrix): Mark {
  switch (mark.kind) {
    case 'path':
      return { ...mark, contours: mark.contours.map(contour => transformContour(contour, matrix)) }
    case 'fill':
      return { ...mark, regions: mark.regions.map(region => transformRegion(region, matrix)) }
    case 'text':
      return { ...mark, at: apply(matrix, mark.at), angle: mark.angle + Math.atan2(matrix.b, matrix.a) }
  }
}

/** A mark so many millimetres to the right and up. */
export function moveMark(mark: Mark, right: number, up: number): Mark {
  return right === 0 && up === 0 ? mark : transformMark(mark, shift(right, up))
}
