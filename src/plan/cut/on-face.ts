import type { Source } from '../../finding/source.ts'
import { located } from '../../yaml/schema/leaf.ts'
import type { Fail } from '../../yaml/schema/reader.ts'
import type { Located, PositionPlan } from '../plan.ts'
import type { Faces } from '../schema/face.ts'
import { placeOnFace, type WrittenPosition } from '../schema/position.ts'

/** The front unless the plan says otherwise, and the place there. */
export function onFace(
  on: Faces | undefined,
  at: WrittenPosition | undefined,
  name: Located<string>,
  cut: Source,
  fail: Fail,
): { readonly on: Faces; readonly at: PositionPlan } | undefined {
  const faces: Faces = on ?? [located('front', name.source)]
  const position = placeOnFace(at, faces[0].value, cut, fail)
  return position && { on: faces, at: position }
}
