import { id } from '../schema/id.ts'
import { choice, located } from '../schema/leaf.ts'
import { mapping } from '../schema/mapping.ts'
import { placeOnFace } from '../schema/position.ts'
import { optional } from '../schema/reader.ts'
import { dimensions } from '../schema/size.ts'
import { type CutReaders, commonKeys, laterCutKeys } from './cut-kind.ts'

/** The edges and the ends of a part: a notch is cut out of one of them, through the thickness. */
const edges = ['bottom', 'top', 'left', 'right'] as const

export const notch: CutReaders['notch'] = mapping(
  { name: 'a notch', example: 'size: 1 1/2 x 5/16', later: laterCutKeys },
  {
    notch: id,
    ...commonKeys,
    on: optional(choice('an edge or end', edges)),
    size: dimensions('along the edge x into the part, such as 1 1/2 x 5/16', [2]),
  },
  ({ notch, at, on, size: [along, into], ...rest }, { source }, fail) => {
    const edge = on ?? located('bottom', notch.source)
    const isEdge = edge.value === 'bottom' || edge.value === 'top'
    const position = placeOnFace(at, edge.value, source, fail, [isEdge ? 'along' : 'across'])
    if (!position || !along || !into) return undefined
    return { kind: 'notch', id: notch, on: edge, at: position, along, into, ...rest, source }
  },
)
