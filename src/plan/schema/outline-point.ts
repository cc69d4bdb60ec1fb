import { fault } from '../../yaml/fault.ts'
import { listOrGroup } from '../../yaml/schema/either.ts'
import { jsonSchemaOf } from '../../yaml/schema/json-schema.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { type Reader, reader, readWithin } from '../../yaml/schema/reader.ts'
import type { DistancePlan, OutlinePoint } from '../plan.ts'
import { pointPair } from './point-pair.ts'
import { distanceKeys, fromSides, positionOf } from './position.ts'

const pair: Reader<OutlinePoint> = reader(
  pointPair.description!,
  (node, fail) => {
    const read = readWithin(pointPair, node, fail)
    if (!read) return undefined
    const along: DistancePlan = { kind: 'from-side', side: 'left', length: read.x }
    const across: DistancePlan = { kind: 'from-side', side: 'bottom', length: read.y }
    return { along, across, source: read.source }
  },
  jsonSchemaOf(pointPair),
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
