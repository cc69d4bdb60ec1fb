import type { Bore } from '../feature.ts'

/**
 * How deep the mouth of a hole goes, in millimetres along the axis from the face: none, 0; a countersink to where its
 * cone has narrowed to the hole.
 *
 * Source: a cone of the whole angle A that narrows from D to d is (D − d)/2 / tan(A/2) high.
 */
export function mouthDepth({ mouth, diameter }: Bore): number {
  if (mouth === undefined) return 0
  if (mouth.kind === 'counterbore') return mouth.depth.mm
  return (mouth.diameter.mm - diameter.mm) / 2 / Math.tan(mouth.angle / 2)
}
