import { isList, sourceOf } from '../../yaml/document/tree.ts'
import { fault } from '../../yaml/fault.ts'
import { listOrGroup } from '../../yaml/schema/either.ts'
import { jsonSchemaOf } from '../../yaml/schema/json-schema.ts'
import { wrongKind } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { type Reader, reader, readWithin } from '../../yaml/schema/reader.ts'
import { size } from '../../yaml/schema/size.ts'
import type { DistancePlan, OutlinePoint } from '../plan.ts'
import { distanceKeys, fromSides, positionOf } from './position.ts'

const wanted = 'a point [x, y], such as [5 1/4, 1/2]'

const pair: Reader<OutlinePoint> = reader(
  wanted,
  (node, fail) => {
    if (!isList(node) || node.length !== 2) return void fail(wrongKind(node, wanted))
    const [x, y] = node.map(entry => readWithin(size, entry, fail))
    if (!x || !y) return undefined
    const along: DistancePlan = { kind: 'from-side', side: 'left', length: x }
    const across: DistancePlan = { kind: 'from-side', side: 'bottom', length: y }
    return { along, across, source: sourceOf(node) }
  },
  { type: 'array', items: jsonSchemaOf(size), minItems: 2, maxItems: 2 },
)

const { left, right, top, bottom } = distanceKeys

/** `{ right: 1, top: 1/2 }` */
const fromAnySide: Reader<OutlinePoint> = mapping(
  { name: 'a point', example: 'right: 1, top: 1/2' },
  { left, right, top, bottom },
  (values, { keys, source }, fail) => {
    const sides = fromSides(positionOf(values, { keys, source }), 'front', source, fail)
    if (!sides) return undefined
    const { along, across } = sides
    if (along && across) return { along, across, source }
    const key = along ? 'bottom' : 'left'
    return void fail(fault('missing-key', source, { key, within: 'a point', wanted: 'two distances' }))
  },
)

/** A point of an outline. */
export const outlinePoint: Reader<OutlinePoint> = listOrGroup(pair, fromAnySide)
