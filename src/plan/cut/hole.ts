import { mapping } from '../../yaml/schema/mapping.ts'
import { cutId } from '../schema/cut-id.ts'
import { bored, boredInJson, boredKeys } from './bored.ts'
import { type CutReaders, inWords, onFaceKeys } from './cut-kind.ts'
import { onFace } from './on-face.ts'

const name = 'a hole'

export const hole: CutReaders['hole'] = mapping(
  { name, example: 'diameter: 3/16', json: boredInJson },
  { hole: cutId, ...onFaceKeys, ...boredKeys },
  ({ hole, at, on, ...rest }, place, fail) => {
    const { source } = place
    const bore = bored(rest, on, place, name, fail)
    const placed = onFace(on, at, hole, source, fail)
    return bore && placed && { kind: 'hole', id: hole, ...placed, ...bore, ...inWords(rest), source }
  },
)
