import type { MappingPlace } from '../../yaml/document/tree.ts'
import { isList, sourceOf } from '../../yaml/document/tree.ts'
import { fault } from '../../yaml/fault.ts'
import { list } from '../../yaml/schema/collection.ts'
import { jsonSchemaOf } from '../../yaml/schema/json-schema.ts'
import { located, wrongKind } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { type Fail, optional, type Reader, reader, readWithin } from '../../yaml/schema/reader.ts'
import { size } from '../../yaml/schema/size.ts'
import { maxEngravedLines } from '../limits.ts'
import type { DrawnPoint, EngravePlan } from '../plan.ts'
import { cutId } from '../schema/cut-id.ts'
import type { Faces } from '../schema/face.ts'
import { fromSides } from '../schema/position.ts'
import { label } from '../schema/text.ts'
import { type CutReaders, inWords, onFaceKeys } from './cut-kind.ts'
import { onFace } from './on-face.ts'

const wantedPoint = 'a point [x, y], such as [1/4, 1/2]'

const point: Reader<DrawnPoint> = reader(
  wantedPoint,
  (node, fail) => {
    if (!isList(node) || node.length !== 2) return void fail(wrongKind(node, wantedPoint))
    const [x, y] = node.map(entry => readWithin(size, entry, fail))
    return x && y && { x, y, source: sourceOf(node) }
  },
  { type: 'array', items: jsonSchemaOf(size), minItems: 2, maxItems: 2 },
)

const points = list({ name: 'a list of points', items: 'points of a line', most: maxEngravedLines }, point)

/** From point to point. */
const line: Reader<readonly DrawnPoint[]> = reader(
  points.description!,
  (node, fail) => {
    const read = readWithin(points, node, fail)
    if (!read || read.length > 1) return read
    return void fail(
      fault('nothing-in-it', sourceOf(node), { key: 'lines', wanted: 'two points at least in a line' }),
    )
  },
  jsonSchemaOf(points),
)

const keys = {
  engrave: cutId,
  ...onFaceKeys,
  text: optional(label),
  height: optional(size),
  lines: optional(
    list(
      {
        name: 'a list of lines, each a list of points',
        items: 'lines of one engraving',
        most: maxEngravedLines,
      },
      line,
    ),
  ),
  depth: optional(size),
}

type Values = Parameters<Parameters<typeof mapping<typeof keys, EngravePlan>>[2]>[0]

export const engrave: CutReaders['engrave'] = mapping(
  {
    name: 'an engraving',
    example: 'text: No 2',
    json: { anyOf: [{ required: ['text', 'height'] }, { required: ['lines'] }] },
  },
  keys,
  (values, place, fail) => {
    const { engrave, depth } = values
    const on: Faces = values.on ?? [located('front', engrave.source)]
    const drawing = drawingOf(values, on, place, fail)
    return (
      drawing && {
        kind: 'engrave',
        id: engrave,
        on,
        drawing,
        ...(depth ? { depth } : {}),
        ...inWords(values),
        source: place.source,
      }
    )
  },
)

function drawingOf(
  { engrave, at, text, height, lines }: Values,
  on: Faces,
  { keys, heading, source }: MappingPlace,
  fail: Fail,
): EngravePlan['drawing'] | undefined {
  if (text && lines)
    return void fail(fault('not-both', keys.get('lines')!, { first: 'text', second: 'lines' }))
  const within = 'an engraving'
  if (lines) {
    if (height) return void fail(fault('not-both', keys.get('height')!, { first: 'lines', second: 'height' }))
    if (lines.length === 0) {
      return void fail(
        fault('nothing-in-it', keys.get('lines')!, { key: 'lines', wanted: 'one line at least' }),
      )
    }
    if (!at) return { kind: 'lines', lines }
    const placed = onFace(on, at, engrave, source, fail)
    return placed && { kind: 'lines', lines, at: placed.at }
  }
  if (!text) {
    const wanted = 'the words, and their height; or lines: with a drawing'
    return void fail(fault('missing-key', heading, { key: 'text', within, wanted }))
  }
  if (!height) {
    const wanted = 'how high a capital letter is, such as 1/2'
    return void fail(fault('missing-key', heading, { key: 'height', within, wanted }))
  }
  if (at?.from || at?.concentric) {
    const wanted = 'distances from two sides, such as { left: 1/2, bottom: 1/4 }'
    return void fail(fault('wrong-kind', at.source, { found: 'another place', wanted }))
  }
  const sides = fromSides(at, on[0].value, source, fail)
  return sides && { kind: 'text', text, height, at: sides }
}
