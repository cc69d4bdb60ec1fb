import { fault } from '../../yaml/fault.ts'
import { choice, located } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { optional, type Reader } from '../../yaml/schema/reader.ts'
import { size } from '../../yaml/schema/size.ts'
import type { TaperPlan } from '../plan.ts'
import { angle } from './angle.ts'

/** `{ left: 2, right: 1 1/4 }`, `{ left: 2, angle: 6 }`; the length is the part's own. */
export const taper: Reader<Omit<TaperPlan, 'length'>> = mapping(
  {
    name: 'a taper',
    example: 'left: 2, right: 1 1/4',
    json: {
      anyOf: [
        { required: ['left', 'right'] },
        { required: ['left', 'angle'] },
        { required: ['right', 'angle'] },
      ],
    },
  },
  {
    left: optional(size),
    right: optional(size),
    angle: optional(angle),
    straight: optional(choice('the edge that stays straight', ['bottom', 'top', 'neither'])),
  },
  ({ straight, ...widths }, { source, heading }, fail) => {
    const given = Object.keys(widths).length
    if (given < 2) {
      const key = widths.left ? 'right' : 'left'
      const wanted = 'the widths of both ends, or that of one end and the angle'
      return void fail(fault('missing-key', heading, { key, within: 'a taper', wanted }))
    }
    return { kind: 'taper', ...widths, straight: straight ?? located('bottom', heading), source }
  },
)
