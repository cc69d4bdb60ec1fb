import { count } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { optional } from '../../yaml/schema/reader.ts'
import { size } from '../../yaml/schema/size.ts'
import { maxRowCount } from '../limits.ts'
import { angle } from '../schema/angle.ts'
import { cutId } from '../schema/cut-id.ts'
import { bored, boredInJson, boredKeys } from './bored.ts'
import { type CutReaders, inWords, onFaceKeys } from './cut-kind.ts'
import { onFace } from './on-face.ts'

const name = 'a circle of holes'

export const holeCircle: CutReaders['hole-circle'] = mapping(
  { name, example: 'circle: 3', json: boredInJson },
  {
    'hole-circle': cutId,
    ...onFaceKeys,
    circle: size,
    count: count(maxRowCount),
    start: optional(angle),
    ...boredKeys,
  },
  ({ 'hole-circle': id, at, on, circle, count, start, ...rest }, place, fail) => {
    const { source } = place
    const bore = bored(rest, on, place, name, fail)
    const placed = onFace(on, at, id, source, fail)
    if (!bore || !placed) return undefined
    const turned = start ? { start } : {}
    return { kind: 'hole-circle', id, ...placed, circle, count, ...turned, ...bore, ...inWords(rest), source }
  },
)
