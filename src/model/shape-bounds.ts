import { boundsOfContours, regionBounds } from '../geometry/measure/bounds.ts'
import type { Bounds } from '../geometry/shape/contour.ts'
import type { Shape } from './feature.ts'

/**
 * The rectangle that a shape lies in, as seen on its face. Of an engraved text, whose length only its letters say, the
 * upright through the point where it is placed, from the base line to the height of its capitals.
 */
export function shapeBounds(shape: Shape): Bounds {
  switch (shape.kind) {
    case 'bore': {
      const { x, y } = shape.centre
      const radius = shape.diameter.mm / 2
      return { left: x - radius, right: x + radius, bottom: y - radius, top: y + radius }
    }
    case 'engraved-lines':
      return boundsOfContours(shape.paths)
    case 'engraved-text': {
      const { x, y } = shape.at
      return { left: x, right: x, bottom: y, top: y + shape.height.mm }
    }
    default:
      return regionBounds(shape.region)
  }
}
