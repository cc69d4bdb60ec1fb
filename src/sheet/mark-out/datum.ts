import type { Side } from '../../finding/side.ts'
import type { Part } from '../../model/part.ts'
import type { Point3 } from '../../model/pose.ts'
import type { View } from './view.ts'

export type Axis = 'x' | 'y'

/** What a view is measured from along one of its axes: where that lies, and which way leads into the wood. */
export type Datum = {
  readonly at: number
  readonly inward: 1 | -1
  readonly name: string
  /** The direction of the part that is measured. */
  readonly measures: 'length' | 'width' | 'thickness' | 'edge'
}

/**
 * Lengths are measured from the reference end, widths from the face edge, and through the thickness from the face side;
 * along an edge of an outline, from where it begins at the left as it is seen.
 */
export function datumOf(
  axis: Axis,
  { pose, box }: View,
  {
    length,
    width,
    thickness,
    faceEdge,
    referenceEnd,
  }: Pick<Part, 'length' | 'width' | 'thickness' | 'faceEdge' | 'referenceEnd'>,
): Datum {
  const direction = axis === 'x' ? pose.right : pose.up
  const along = (axisOfPart: keyof Point3, at: number, inward: 1 | -1): Pick<Datum, 'at' | 'inward'> => {
    const sign = direction[axisOfPart] > 0 ? 1 : -1
    return { at: (at - pose.origin[axisOfPart]) * sign, inward: sign === inward ? 1 : -1 }
  }
  const runs = (axisOfPart: keyof Point3): boolean => Math.abs(direction[axisOfPart]) === 1
  if (runs('x')) {
    const left = referenceEnd === 'left'
    return { ...along('x', left ? 0 : length.mm, left ? 1 : -1), name: 'reference end', measures: 'length' }
  }
  if (runs('y')) {
    const bottom = faceEdge === 'bottom'
    return { ...along('y', bottom ? 0 : width.mm, bottom ? 1 : -1), name: 'face edge', measures: 'width' }
  }
  if (runs('z')) return { ...along('z', thickness.mm, -1), name: 'face side', measures: 'thickness' }
  return { at: box.left, inward: 1, name: 'left end of the edge', measures: 'edge' }
}

/** The side of the view that a datum lies at. */
export function sideOfDatum(axis: Axis, { inward }: Pick<Datum, 'inward'>): Exclude<Side, 'front' | 'back'> {
  if (axis === 'x') return inward === 1 ? 'left' : 'right'
  return inward === 1 ? 'bottom' : 'top'
}
