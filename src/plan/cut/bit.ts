import { fault } from '../../yaml/fault.ts'
import { either } from '../../yaml/schema/either.ts'
import { jsonSchemaOf } from '../../yaml/schema/json-schema.ts'
import { choice, leaf } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { optional, type Reader, readWithin } from '../../yaml/schema/reader.ts'
import type { BitPlan } from '../plan.ts'
import { angle } from '../schema/angle.ts'

const point = choice('the point of a bit', ['twist', 'brad', 'flat'])

const pointAlone: Reader<BitPlan> = leaf(
  point.description!,
  (node, fail) => {
    const read = readWithin(point, node, fail)
    return read && { point: read }
  },
  jsonSchemaOf(point),
)

/** `twist`, or `{ point: twist, angle: 135 }`: the angle is that of a twist drill alone. */
export const bit: Reader<BitPlan> = either(
  pointAlone,
  mapping(
    { name: 'a bit', example: 'point: twist, angle: 135' },
    { point, angle: optional(angle) },
    ({ point, angle }, { keys }, fail) => {
      if (!angle) return { point }
      if (point.value === 'twist') return { point, angle }
      const facts = { first: `a ${point.value} point`, second: 'angle' }
      return void fail(fault('not-both', keys.get('angle')!, facts))
    },
  ),
)
