import { id } from '../schema/id.ts'
import { mapping } from '../schema/mapping.ts'
import { placeOnFace } from '../schema/position.ts'
import { optional } from '../schema/reader.ts'
import { size } from '../schema/size.ts'
import { type CutReaders, commonKeys, laterCutKeys, onFront } from './cut-kind.ts'

export const hole: CutReaders['hole'] = mapping(
  { name: 'a hole', example: 'diameter: 1/4', later: laterCutKeys },
  { hole: id, ...commonKeys, diameter: size, depth: optional(size) },
  ({ hole, at, on, ...rest }, { source }, fail) => {
    const face = onFront(on, hole)
    const position = placeOnFace(at, face.value, source, fail)
    return position && { kind: 'hole', id: hole, on: face, at: position, ...rest, source }
  },
)
