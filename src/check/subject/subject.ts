import type { Model, Part } from '../../model/part.ts'
import type { Workshop } from '../../workshop/workshop.ts'
import { type Inside, insideOf } from './inside.ts'
import { type Plane, planesOf } from './plane.ts'

/** What the rules ask: the model, the shop it is made in, and every part as the tools find it. */
export type Subject = {
  readonly model: Model
  readonly workshop: Workshop
  readonly parts: readonly PartAtHand[]
}

export type PartAtHand = { readonly part: Part; readonly planes: readonly Plane[]; readonly inside: Inside }

/** What several rules ask of the same part is worked out once. */
export function subjectOf(model: Model, workshop: Workshop): Subject {
  const parts = model.parts.map(part => {
    const planes = planesOf(part)
    return { part, planes, inside: insideOf(part, planes, workshop) }
  })
  return { model, workshop, parts }
}
