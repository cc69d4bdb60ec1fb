import { count } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { optional, type Reader } from '../../yaml/schema/reader.ts'
import { size } from '../../yaml/schema/size.ts'
import { maxPieces } from '../limits.ts'
import type { StockPlan } from '../plan.ts'
import { label } from './text.ts'

/** A kind of stock without its id, which is the key it stands under. */
export type UnnamedStock = Omit<StockPlan, 'id'>

export const stock: Reader<UnnamedStock> = mapping(
  { name: 'a stock', example: 'thickness: 1/2', later: ['grain', 'seam'] },
  {
    thickness: size,
    width: optional(size),
    length: optional(size),
    count: optional(count(maxPieces)),
    wood: optional(label),
    label: optional(label),
  },
  values => values,
)
