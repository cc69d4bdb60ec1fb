import { choice, located } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { optional } from '../../yaml/schema/reader.ts'
import { dimensions, size } from '../../yaml/schema/size.ts'
import { angle } from '../schema/angle.ts'
import { cutId } from '../schema/cut-id.ts'
import { type CutReaders, inWords, onFaceKeys } from './cut-kind.ts'
import { onFace } from './on-face.ts'

export const slot: CutReaders['slot'] = mapping(
  { name: 'a slot', example: 'size: 7/8 x 3/8' },
  {
    slot: cutId,
    ...onFaceKeys,
    size: dimensions('along x across, such as 7/8 x 3/8', [2]),
    ends: optional(choice('the ends of a slot', ['square', 'round'])),
    angle: optional(angle),
    depth: optional(size),
  },
  ({ slot, at, on, size: [along, across], ends, angle, depth, ...rest }, { source }, fail) => {
    const placed = onFace(on, at, slot, source, fail)
    if (!placed || !along || !across) return undefined
    return {
      kind: 'slot',
      id: slot,
      ...placed,
      along,
      across,
      ends: ends ?? located('square', slot.source),
      ...(angle ? { angle } : {}),
      ...(depth ? { depth } : {}),
      ...inWords(rest),
      source,
    }
  },
)
