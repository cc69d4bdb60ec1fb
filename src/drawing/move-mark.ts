import { shift } from '../geometry/shape/matrix.ts'
import { transformContour, transformRegion } from '../geometry/shape/transform.ts'
import type { Mark } from './mark.ts'

/** A mark so many millimetres to the right and up. */
export function moveMark(mark: Mark, right: number, up: number): Mark {
  if (right === 0 && up === 0) return mark
  const by = shift(right, up)
  switch (mark.kind) {
    case 'path':
      return { ...mark, contours: mark.contours.map(contour => transformContour(contour, by)) }
    case 'fill':
      return { ...mark, regions: mark.regions.map(region => transformRegion(region, by)) }
    case 'text':
      return { ...mark, at: { x: mark.at.x + right, y: mark.at.y + up } }
  }
}
