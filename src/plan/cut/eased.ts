import { sayFace } from '../../finding/face-name.ts'
import { isLeaf, sourceOf } from '../../yaml/document/tree.ts'
import { fault } from '../../yaml/fault.ts'
import { list } from '../../yaml/schema/collection.ts'
import { jsonSchemaOf } from '../../yaml/schema/json-schema.ts'
import { located } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { optional, type Reader, reader, readWithin } from '../../yaml/schema/reader.ts'
import { dimensions, size } from '../../yaml/schema/size.ts'
import { maxSteps } from '../limits.ts'
import type { ChamferPlan } from '../plan.ts'
import { cutId } from '../schema/cut-id.ts'
import { type Faces, face, faces } from '../schema/face.ts'
import { type CutReaders, inWords, wordKeys } from './cut-kind.ts'

const several = list({ name: 'edges, such as [top, left]', items: 'edges of one cut', most: maxSteps }, face)

/** `all`, an edge, or a list of edges. */
const edges: Reader<ChamferPlan['edges']> = reader(
  `all, an edge such as top, or a list of ${several.description}`,
  (node, fail) => {
    if (isLeaf(node) && node.text === 'all') return 'all'
    if (isLeaf(node)) {
      const one = readWithin(face, node, fail)
      return one && [one]
    }
    const read = readWithin(several, node, fail)
    if (read?.length === 0) {
      return void fail(fault('nothing-in-it', sourceOf(node), { key: 'edges', wanted: 'one edge at least' }))
    }
    const twice = read?.find((edge, i) => read.findIndex(other => other.value === edge.value) < i)
    if (!twice) return read
    return void fail(fault('side-twice', twice.source, { side: sayFace(twice.value) }))
  },
  { anyOf: [jsonSchemaOf(face), jsonSchemaOf(several)] },
)

const arrisKeys = { ...wordKeys, on: optional(faces), edges }

const frontOf = (id: ChamferPlan['id']): Faces => [located('front', id.source)]

export const chamfer: CutReaders['chamfer'] = mapping(
  { name: 'a chamfer', example: 'size: 1/16' },
  {
    chamfer: cutId,
    ...arrisKeys,
    size: dimensions(
      'on both faces, such as 1/16, or the width on the face x the depth down the edge',
      [1, 2],
    ),
  },
  ({ chamfer, on = frontOf(chamfer), edges, size: [width, depth = width], ...rest }, { source }) =>
    width && depth && { kind: 'chamfer', id: chamfer, on, edges, width, depth, ...inWords(rest), source },
)

export const roundOver: CutReaders['round-over'] = mapping(
  { name: 'a round-over', example: 'radius: 1/8' },
  { 'round-over': cutId, ...arrisKeys, radius: size },
  ({ 'round-over': id, on = frontOf(id), edges, radius, ...rest }, { source }) => ({
    kind: 'round-over',
    id,
    on,
    edges,
    radius,
    ...inWords(rest),
    source,
  }),
)
