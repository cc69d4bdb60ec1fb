import { either } from '../../yaml/schema/either.ts'
import { leaf } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { optional, type Reader } from '../../yaml/schema/reader.ts'
import { dimensionsIn, size, sizeIn } from '../../yaml/schema/size.ts'
import type { MouthPlan } from '../plan.ts'
import { angle } from '../schema/angle.ts'

type MouthOf<K extends MouthPlan['kind']> = Extract<MouthPlan, { kind: K }>

const diameterAndDepth = 'diameter x depth, such as 1/2 x 3/16'

/** `1/2 x 3/16`, or `{ diameter: 1/2, depth: 3/16 }`. */
export const counterbore: Reader<MouthOf<'counterbore'>> = either(
  leaf(diameterAndDepth, (node, fail) => {
    const [diameter, depth] = dimensionsIn(node, diameterAndDepth, [2], fail) ?? []
    return diameter && depth && { kind: 'counterbore', diameter, depth, source: node.source }
  }),
  mapping(
    { name: 'a counterbore', example: 'diameter: 1/2, depth: 3/16' },
    { diameter: size, depth: size },
    ({ diameter, depth }, { source }) => ({ kind: 'counterbore', diameter, depth, source }),
  ),
)

/** `3/8`, or `{ diameter: 3/8, angle: 90 }`. */
export const countersink: Reader<MouthOf<'countersink'>> = either(
  leaf('the diameter of a countersink, such as 3/8', (node, fail) => {
    const diameter = sizeIn(node, fail)
    return diameter && { kind: 'countersink', diameter, source: node.source }
  }),
  mapping(
    { name: 'a countersink', example: 'diameter: 3/8, angle: 82' },
    { diameter: size, angle: optional(angle) },
    ({ diameter, angle }, { source }) => ({
      kind: 'countersink',
      diameter,
      ...(angle ? { angle } : {}),
      source,
    }),
  ),
)
