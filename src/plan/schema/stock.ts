import { maxPieces } from '../limits.ts'
import type { StockPlan } from '../plan.ts'
import { count } from './leaf.ts'
import { mapping } from './mapping.ts'
import { optional, type Reader } from './reader.ts'
import { size } from './size.ts'
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
