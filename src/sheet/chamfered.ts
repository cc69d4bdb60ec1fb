import type { Segment } from '../geometry/shape/segment.ts'
import type { Part } from '../model/part.ts'

/** Tells the edges that only cut off a corner: they are marked by how far they start from it. */
export function chamferedIn({ corners }: Pick<Part, 'corners'>): (edge: Segment) => boolean {
  const names = new Set(corners.filter(({ kind }) => kind === 'chamfer').map(({ name }) => name))
  return ({ kind, tag }) => kind === 'line' && tag !== undefined && names.has(tag)
}
