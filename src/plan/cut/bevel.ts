import { choice } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { reader, readWithin } from '../../yaml/schema/reader.ts'
import { angle } from '../schema/angle.ts'
import { cutId } from '../schema/cut-id.ts'
import { faces } from '../schema/face.ts'
import { type CutReaders, inWords, wordKeys } from './cut-kind.ts'

const shorter = choice('the face on which the part is shorter', ['front', 'back'])

/** For an editor it is any word, since a plan may have its own for the sides. */
const shortFace: typeof shorter = reader(
  `the shorter face, ${shorter.description}`,
  (node, fail) => readWithin(shorter, node, fail),
  { type: 'string' },
)

export const bevel: CutReaders['bevel'] = mapping(
  { name: 'a bevel', example: 'angle: 15' },
  {
    bevel: cutId,
    ...wordKeys,
    on: faces,
    angle,
    short: shortFace,
  },
  ({ bevel, on, angle, short, ...rest }, { source }) => ({
    kind: 'bevel',
    id: bevel,
    on,
    angle,
    short,
    ...inWords(rest),
    source,
  }),
)
