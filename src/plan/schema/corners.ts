import { fault } from '../../yaml/fault.ts'
import { either } from '../../yaml/schema/either.ts'
import { leaf } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { optional, type Reader } from '../../yaml/schema/reader.ts'
import { size, sizeIn } from '../../yaml/schema/size.ts'
import { type CornerName, type CornerPlan, type CornersPlan, cornerNames } from '../plan.ts'

const radius: Reader<CornerPlan> = leaf('a radius', (node, fail) => {
  const length = sizeIn(node, fail)
  return length && { kind: 'round', length }
})

/** `{ round: 1/4 }` or `{ chamfer: 1/8 }`, and at the part itself the corners by name. */
const oneShape = { round: optional(size), chamfer: optional(size) }

const corner: Reader<CornerPlan> = either(
  radius,
  mapping({ name: 'a corner', example: 'round: 1/4' }, oneShape, ({ round, chamfer }, place, fail) => {
    if (round && chamfer) {
      return void fail(fault('not-both', place.keys.get('chamfer')!, { first: 'round', second: 'chamfer' }))
    }
    if (round) return { kind: 'round', length: round }
    if (chamfer) return { kind: 'chamfer', length: chamfer }
    return void fail(
      fault('missing-key', place.source, { key: 'round', within: 'a corner', wanted: 'a radius' }),
    )
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
      ...oneShape,
    },
    ({ round, chamfer, ...byName }, place, fail) => {
      const all = chamfer
        ? ({ kind: 'chamfer', length: chamfer } as const)
        : round && ({ kind: 'round', length: round } as const)
      if (round && chamfer) {
        return void fail(fault('not-both', place.keys.get('chamfer')!, { first: 'round', second: 'chamfer' }))
      }
      return { ...(all ? allAlike(all) : {}), ...byName }
    },
  ),
)

function allAlike(corner: CornerPlan): Record<CornerName, CornerPlan> {
  return Object.fromEntries(cornerNames.map(name => [name, corner])) as Record<CornerName, CornerPlan>
}
