import type { MappingPlace } from '../../yaml/document/tree.ts'
import { fault } from '../../yaml/fault.ts'
import { either } from '../../yaml/schema/either.ts'
import { leaf } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { type Fail, optional, type Reader } from '../../yaml/schema/reader.ts'
import { size, sizeIn } from '../../yaml/schema/size.ts'
import { type CornerName, type CornerPlan, type CornersPlan, cornerNames } from '../corner-plan.ts'
import type { WrittenLength } from '../plan.ts'

const radius: Reader<CornerPlan> = leaf('a radius', (node, fail) => {
  const length = sizeIn(node, fail)
  return length && { kind: 'round', length }
})

/** `{ round: 1/4 }` or `{ chamfer: 1/8 }`. */
export const cornerShapes = { round: optional(size), chamfer: optional(size) }

type Shapes = { readonly [K in keyof typeof cornerShapes]?: WrittenLength | undefined }

/** The shape that is given, if one is; two of them are a fault. */
export function cornerShape(
  { round, chamfer }: Shapes,
  { keys }: MappingPlace,
  fail: Fail,
): CornerPlan | undefined {
  if (round && chamfer) {
    fail(fault('not-both', keys.get('chamfer')!, { first: 'round', second: 'chamfer' }))
  }
  if (chamfer) return { kind: 'chamfer', length: chamfer }
  return round && { kind: 'round', length: round }
}

const corner: Reader<CornerPlan> = either(
  radius,
  mapping({ name: 'a corner', example: 'round: 1/4' }, cornerShapes, (values, place, fail) => {
    const shape = cornerShape(values, place, fail)
    if (shape) return shape
    const facts = { key: 'round', within: 'a corner', wanted: 'a radius' }
    return void fail(fault('missing-key', place.source, facts))
  }),
)

/** One corner for all four, or corners by name. */
export const corners: Reader<CornersPlan> = either(
  leaf('a radius for all corners', (node, fail) => {
    const length = sizeIn(node, fail)
    return length && allAlike({ kind: 'round', length })
  }),
  mapping(
    { name: 'the corners', example: 'top-left: 1/4' },
    {
      'bottom-left': optional(corner),
      'bottom-right': optional(corner),
      'top-right': optional(corner),
      'top-left': optional(corner),
      ...cornerShapes,
    },
    ({ round, chamfer, ...byName }, place, fail) => {
      const shape = cornerShape({ round, chamfer }, place, fail)
      return { ...(shape ? allAlike(shape) : {}), ...byName }
    },
  ),
)

function allAlike(corner: CornerPlan): Record<CornerName, CornerPlan> {
  return Object.fromEntries(cornerNames.map(name => [name, corner])) as Record<CornerName, CornerPlan>
}
