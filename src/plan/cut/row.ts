import { sides } from '../../finding/side.ts'
import { maxRowCount } from '../limits.ts'
import { id } from '../schema/id.ts'
import { choice, count } from '../schema/leaf.ts'
import { mapping } from '../schema/mapping.ts'
import { placeOnFace } from '../schema/position.ts'
import { optional } from '../schema/reader.ts'
import { size } from '../schema/size.ts'
import { type CutReaders, commonKeys, laterCutKeys, onFront } from './cut-kind.ts'

export const row: CutReaders['row'] = mapping(
  { name: 'a row', example: 'spacing: 1 1/4', later: laterCutKeys },
  {
    row: id,
    ...commonKeys,
    toward: choice('a side', sides),
    spacing: size,
    count: count(maxRowCount),
    diameter: size,
    depth: optional(size),
  },
  ({ row, at, on, ...rest }, { source }, fail) => {
    const face = onFront(on, row)
    const position = placeOnFace(at, face.value, source, fail)
    return position && { kind: 'row', id: row, on: face, at: position, ...rest, source }
  },
)
