import type { MappingPlace } from '../../yaml/document/tree.ts'
import { fault } from '../../yaml/fault.ts'
import { count } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { type Fail, optional } from '../../yaml/schema/reader.ts'
import { size } from '../../yaml/schema/size.ts'
import { maxRowCount } from '../limits.ts'
import type { RowPlan } from '../plan.ts'
import { cutId } from '../schema/cut-id.ts'
import type { Faces } from '../schema/face.ts'
import { fromSides, position } from '../schema/position.ts'
import { sideWord } from '../schema/side-word.ts'
import { bored, boredInJson, boredKeys } from './bored.ts'
import { type CutReaders, inWords, onFaceKeys } from './cut-kind.ts'
import { onFace } from './on-face.ts'

const name = 'a row'

const keys = {
  row: cutId,
  ...onFaceKeys,
  toward: optional(sideWord),
  spacing: optional(size),
  last: optional(position),
  count: count(maxRowCount),
  ...boredKeys,
}

type Values = Parameters<Parameters<typeof mapping<typeof keys, RowPlan>>[2]>[0]

export const row: CutReaders['row'] = mapping(
  { name, example: 'count: 6', json: boredInJson },
  keys,
  (values, place, fail) => {
    const { row, at, on, count } = values
    const { source } = place
    const bore = bored(values, on, place, name, fail)
    const placed = onFace(on, at, row, source, fail)
    const run = placed && rowRun(values, placed.on, place, fail)
    return bore && run && { kind: 'row', id: row, ...placed, run, count, ...bore, ...inWords(values), source }
  },
)

/** `toward` and `spacing`, or the place of the last hole, which says both. */
function rowRun(
  { toward, spacing, last, count }: Values,
  on: Faces,
  { keys, heading, source }: MappingPlace,
  fail: Fail,
): RowPlan['run'] | undefined {
  const missing = (key: string, wanted: string) =>
    void fail(fault('missing-key', heading, { key, within: name, wanted }))
  if (!last) {
    if (!spacing) return missing('spacing', 'from hole to hole; or the place of the last hole (last:)')
    if (!toward) return missing('toward', 'the side that the row leads to')
    return { kind: 'spacing', toward, spacing }
  }
  const stray = spacing ? 'spacing' : toward ? 'toward' : undefined
  if (stray) return void fail(fault('not-both', keys.get(stray)!, { first: 'last', second: stray }))
  if (count.value < 2) {
    const wanted = 'two holes at least where the last one is given'
    return void fail(fault('not-a-count', count.source, { found: String(count.value), wanted }))
  }
  if (last.from || last.concentric) {
    const wanted = 'a distance from a side, such as { right: 1 }'
    return void fail(fault('wrong-kind', last.source, { found: 'another place', wanted }))
  }
  const place = fromSides(last, on[0].value, source, fail)
  if (!place) return undefined
  if (place.along && place.across) {
    const wanted = 'one distance: in the other direction the last hole is level with the first'
    return void fail(fault('wrong-kind', last.source, { found: 'a second distance', wanted }))
  }
  return { kind: 'last', last: place }
}
