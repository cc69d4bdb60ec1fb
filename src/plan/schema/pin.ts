import { count } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { optional, type Reader } from '../../yaml/schema/reader.ts'
import { size } from '../../yaml/schema/size.ts'
import { maxPieces } from '../limits.ts'
import type { PinPlan } from '../plan.ts'
import { label, note } from './text.ts'

/** A pin without its id, which is the key it stands under. */
export type UnnamedPin = Omit<PinPlan, 'id'>

export const pin: Reader<UnnamedPin> = mapping(
  { name: 'a pin', example: 'diameter: 3/16' },
  {
    diameter: size,
    length: optional(size),
    count: optional(count(maxPieces)),
    wood: optional(label),
    label: optional(label),
    note: optional(note),
    page: optional(label),
  },
  values => values,
)
