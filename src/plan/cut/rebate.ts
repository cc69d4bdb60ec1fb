import { located } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { optional } from '../../yaml/schema/reader.ts'
import { dimensions } from '../../yaml/schema/size.ts'
import { type Direction, faceDirections } from '../face-directions.ts'
import type { RebatePlan } from '../plan.ts'
import { cutId } from '../schema/cut-id.ts'
import { type Faces, face, faces } from '../schema/face.ts'
import { type CutReaders, inWords, wordKeys } from './cut-kind.ts'
import { runKeys, runOf } from './stops.ts'

export const rebate: CutReaders['rebate'] = mapping(
  { name: 'a rebate', example: 'size: 1/4 x 3/8' },
  {
    rebate: cutId,
    ...wordKeys,
    on: optional(faces),
    edge: face,
    size: dimensions('the width on the face x the depth into it, such as 1/4 x 3/8', [2]),
    ...runKeys,
  },
  ({ rebate, on, edge, size: [width, depth], ...rest }, { keys, source }, fail) => {
    const faces: Faces = on ?? [located('front', rebate.source)]
    const run = runOf(rest, runsBetween(faces, edge), keys, fail)
    if (!run || !width || !depth) return undefined
    return { kind: 'rebate', id: rebate, on: faces, edge, width, depth, ...run, ...inWords(rest), source }
  },
)

/** The sides that it leads to: those of the edge along which the two faces meet, which is neither front nor back. */
function runsBetween([on]: Faces, edge: RebatePlan['edge']): Direction {
  const along = edge.value === 'front' || edge.value === 'back' ? on.value : edge.value
  const directions = faceDirections(along)
  return along === 'left' || along === 'right' ? directions.across : directions.along
}
