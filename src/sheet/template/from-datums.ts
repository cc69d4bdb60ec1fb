import { regionBounds } from '../../geometry/measure/bounds.ts'
import type { Placed } from '../../model/feature.ts'
import { placeOfMirrored } from '../../model/mirror.ts'
import { shapeBounds } from '../../model/shape-bounds.ts'
import type { Served } from './pieces-served.ts'

/** How far a cut is from the reference end and the face edge, in millimetres, positive into the part: the centre of a hole, the near sides of anything else. */
export type FromDatums = { readonly referenceEnd: number; readonly faceEdge: number }

/** The end of the drawing that the reference end is at. */
export function referenceEndOf({ part, pieces }: Served): 'left' | 'right' {
  const end = pieces[0].hand === 'mirrored' ? placeOfMirrored(part.referenceEnd) : part.referenceEnd
  return end === 'right' ? 'right' : 'left'
}

export function fromDatums({ shape }: Placed, served: Served): FromDatums {
  const { left, right, bottom, top } = regionBounds(served.pieces[0].solid.outline)
  const box =
    shape.kind === 'bore'
      ? { left: shape.centre.x, right: shape.centre.x, bottom: shape.centre.y, top: shape.centre.y }
      : shapeBounds(shape)
  return {
    referenceEnd: referenceEndOf(served) === 'left' ? box.left - left : right - box.right,
    faceEdge: served.part.faceEdge === 'bottom' ? box.bottom - bottom : top - box.top,
  }
}
