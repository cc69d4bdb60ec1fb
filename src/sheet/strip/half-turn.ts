import type { Mark } from '../../drawing/mark.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import { apply, quarterTurns } from '../../geometry/shape/matrix.ts'
import { transformContour, transformRegion } from '../../geometry/shape/transform.ts'

const half = quarterTurns(2)

/** A mark turned upside down about x = 0, y = 0, its lettering too. */
export function halfTurned(mark: Mark): Mark {
  switch (mark.kind) {
    case 'path':
      return { ...mark, contours: mark.contours.map(contour => transformContour(contour, half)) }
    case 'fill':
      return { ...mark, regions: mark.regions.map(region => transformRegion(region, half)) }
    case 'text':
      return { ...mark, at: apply(half, mark.at), angle: mark.angle + Math.PI }
  }
}

export function halfTurnedBox({ left, right, bottom, top }: Bounds): Bounds {
  return { left: -right, right: -left, bottom: -top, top: -bottom }
}
