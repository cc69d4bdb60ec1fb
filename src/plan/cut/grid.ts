import { excerpt } from '../../finding/visible.ts'
import { placeWithin } from '../../yaml/document/tree.ts'
import { fault } from '../../yaml/fault.ts'
import { countIn, leaf } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import type { Reader } from '../../yaml/schema/reader.ts'
import { dimensions } from '../../yaml/schema/size.ts'
import { maxRowCount } from '../limits.ts'
import type { GridPlan } from '../plan.ts'
import { cutId } from '../schema/cut-id.ts'
import { bored, boredInJson, boredKeys } from './bored.ts'
import { type CutReaders, inWords, onFaceKeys } from './cut-kind.ts'
import { onFace } from './on-face.ts'

const name = 'a grid'
const wantedCounts = `how many along x how many across, such as 4 x 3, at most ${maxRowCount} in all`

const counts: Reader<GridPlan['count']> = leaf(
  wantedCounts,
  (node, fail) => {
    const { text, source } = node
    const [, first = '', between = '', second = ''] = /^(\d+)(\s*[xX×]\s*)(\d+)$/.exec(text.trim()) ?? []
    const along = countIn(first, maxRowCount)
    const across = countIn(second, maxRowCount)
    if (along === undefined || across === undefined || along * across > maxRowCount) {
      return void fail(fault('not-a-count', source, { found: excerpt(text), wanted: wantedCounts }))
    }
    const from = text.indexOf(first)
    const then = from + first.length + between.length
    return [
      { value: along, source: placeWithin(node, from, from + first.length) },
      { value: across, source: placeWithin(node, then, then + second.length) },
    ]
  },
  { type: 'string', pattern: '^\\s*\\d+\\s*[xX×]\\s*\\d+\\s*$' },
)

export const grid: CutReaders['grid'] = mapping(
  { name, example: 'count: 4 x 3', json: boredInJson },
  {
    grid: cutId,
    ...onFaceKeys,
    spacing: dimensions('along x across, such as 1/2 x 3/4, or one for both', [1, 2]),
    count: counts,
    ...boredKeys,
  },
  ({ grid, at, on, spacing: [along, across = along], count, ...rest }, place, fail) => {
    const { source } = place
    const bore = bored(rest, on, place, name, fail)
    const placed = onFace(on, at, grid, source, fail)
    if (!bore || !placed || !along || !across) return undefined
    const spacing = [along, across] as const
    return { kind: 'grid', id: grid, ...placed, spacing, count, ...bore, ...inWords(rest), source }
  },
)
