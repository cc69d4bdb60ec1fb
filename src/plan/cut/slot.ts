import { id } from '../schema/id.ts'
import { choice, located } from '../schema/leaf.ts'
import { mapping } from '../schema/mapping.ts'
import { placeOnFace } from '../schema/position.ts'
import { optional } from '../schema/reader.ts'
import { dimensions, size } from '../schema/size.ts'
import { type CutReaders, commonKeys, laterCutKeys, onFront } from './cut-kind.ts'

export const slot: CutReaders['slot'] = mapping(
  { name: 'a slot', example: 'size: 7/8 x 3/8', later: laterCutKeys },
  {
    slot: id,
    ...commonKeys,
    size: dimensions('along x across, such as 7/8 x 3/8', [2]),
    ends: optional(choice('the ends of a slot', ['square', 'round'])),
    depth: optional(size),
  },
  ({ slot, at, on, size: [along, across], ends, ...rest }, { source }, fail) => {
    const face = onFront(on, slot)
    const position = placeOnFace(at, face.value, source, fail)
    if (!position || !along || !across) return undefined
    return {
      kind: 'slot',
      id: slot,
      on: face,
      at: position,
      along,
      across,
      ends: ends ?? located('square', slot.source),
      ...rest,
      source,
    }
  },
)
