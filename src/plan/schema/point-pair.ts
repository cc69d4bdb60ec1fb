import { isList, sourceOf } from '../../yaml/document/tree.ts'
import { jsonSchemaOf } from '../../yaml/schema/json-schema.ts'
import { wrongKind } from '../../yaml/schema/leaf.ts'
import { type Reader, reader, readWithin } from '../../yaml/schema/reader.ts'
import { size } from '../../yaml/schema/size.ts'
import type { DrawnPoint } from '../plan.ts'

const wanted = 'a point [x, y], such as [5 1/4, 1/2]'

/** `[5 1/4, 1/2]` */
export const pointPair: Reader<DrawnPoint> = reader(
  wanted,
  (node, fail) => {
    if (!isList(node) || node.length !== 2) return void fail(wrongKind(node, wanted))
    const [x, y] = node.map(entry => readWithin(size, entry, fail))
    return x && y && { x, y, source: sourceOf(node) }
  },
  { type: 'array', items: jsonSchemaOf(size), minItems: 2, maxItems: 2 },
)
