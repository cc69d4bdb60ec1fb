import { fault } from '../../yaml/fault.ts'
import { choice, located } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { optional } from '../../yaml/schema/reader.ts'
import { dimensions } from '../../yaml/schema/size.ts'
import { cutId } from '../schema/cut-id.ts'
import { fromSides } from '../schema/position.ts'
import { type CutReaders, commonKeys, inWords } from './cut-kind.ts'

/** The edges and the ends of a part: a notch is cut out of one of them, through the thickness. */
const edges = ['bottom', 'top', 'left', 'right'] as const

export const notch: CutReaders['notch'] = mapping(
  { name: 'a notch', example: 'size: 1 1/2 x 5/16' },
  {
    notch: cutId,
    ...commonKeys,
    on: optional(choice('an edge or end', edges)),
    size: dimensions('along the edge x into the part, such as 1 1/2 x 5/16', [2]),
  },
  ({ notch, at, on, size: [along, into], ...rest }, { source }, fail) => {
    const edge = on ?? located('bottom', notch.source)
    if (at?.from || at?.concentric) {
      const wanted = 'a distance along the edge, such as { left: 1 }'
      return void fail(fault('wrong-kind', at.source, { found: 'another place', wanted }))
    }
    const isEdge = edge.value === 'bottom' || edge.value === 'top'
    const direction = isEdge ? 'along' : 'across'
    const position = fromSides(at, edge.value, source, fail, [direction])
    if (!position || !along || !into) return undefined
    const place = position[direction]
    return {
      kind: 'notch',
      id: notch,
      edge,
      ...(place ? { at: place } : {}),
      along,
      into,
      ...inWords(rest),
      source,
    }
  },
)
