import type { DepthPlace } from '../../finding/check-facts.ts'
import type { Place } from '../../finding/finding.ts'
import type { Point3 } from '../../geometry/solid/point3.ts'
import type { Feature } from '../../model/feature.ts'
import { faceOf, type Part } from '../../model/part.ts'
import { onPlane } from '../../model/pose.ts'
import { mm, placeOfFeature } from '../place.ts'

/** A feature, with the point of its face that something inside the wood lies under. */
export function placeAbove(part: Part, feature: Feature, at: Point3): Place {
  const { x, y } = onPlane(faceOf(part.drawn, feature.face).pose, at)
  return { ...placeOfFeature(part, feature), at: { face: feature.face, x, y } }
}

/** How far a place in the wood is from the reference end, the face edge and the front. */
export function depthPlace(
  { length, width, thickness, referenceEnd, faceEdge }: Part,
  at: Point3,
): DepthPlace {
  return {
    end: referenceEnd,
    fromEnd: mm(referenceEnd === 'left' ? at.x : length.mm - at.x),
    edge: faceEdge,
    fromEdge: mm(faceEdge === 'bottom' ? at.y : width.mm - at.y),
    fromFront: mm(thickness.mm - at.z),
  }
}
