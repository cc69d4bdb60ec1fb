import { fault } from '../fault.ts'
import type { DistancePlan, OutlinePoint } from '../plan.ts'
import { isList, sourceOf } from '../yaml/tree.ts'
import { listOrGroup } from './either.ts'
import { jsonSchemaOf } from './json-schema.ts'
import { wrongKind } from './leaf.ts'
import { mapping } from './mapping.ts'
import { distanceKeys, fromSides, positionOf } from './position.ts'
import { type Reader, reader, readWithin } from './reader.ts'
import { size } from './size.ts'

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
    const { along, across } = fromSides(positionOf(values, { keys, source }), 'front', source, fail) ?? {}
    if (along && across) return { along, across, source }
    const key = along ? 'bottom' : 'left'
    return void fail(fault('missing-key', source, { key, within: 'a point', wanted: 'two distances' }))
  },
)

/** A point of an outline. */
export const outlinePoint: Reader<OutlinePoint> = listOrGroup(pair, fromAnySide)
