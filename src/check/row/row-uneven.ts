import type { FindingOf } from '../../finding/finding.ts'
import { regionBounds } from '../../geometry/measure/bounds.ts'
import { millimetresPerInch } from '../../length/unit.ts'
import type { Part } from '../../model/part.ts'
import { coincident, printable } from '../../number/tolerance.ts'
import { mm, placeOfCut } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'
import { type HoleCut, isHole } from '../subject/cut.ts'
import type { Plane } from '../subject/plane.ts'

/**
 * A row whose ends are nearly, but not quite, as far from the ends of the part: a spacing that is wrong by a little
 * adds up, and the row looks even until it is bored.
 */
export const rowUneven: Rule<'row-uneven'> = {
  find: ({ parts }) => parts.flatMap(({ part, planes }) => planes.flatMap(plane => unevenRows(part, plane))),
  explanation: {
    purpose:
      'Most rows stand in the middle of their part. One that misses the middle by a hair has a spacing that is off by a hair, and the holes of the part that it meets will not line up.',
    limit: (_, show) =>
      `the two ends differ by more than can be printed, and by no more than ${show(slip)} for each space`,
    origin: commonPractice,
  },
}

/** A spacing is misread or rounded by so much, not by more: half of the lines of a rule with sixteenths. */
const slip = millimetresPerInch / 32

function unevenRows(part: Part, { cuts, face }: Plane): readonly FindingOf<'row-uneven'>[] {
  const { left, right, bottom, top } = regionBounds(face.region)
  return rowsOf(cuts.filter(isHole)).flatMap((row): FindingOf<'row-uneven'>[] => {
    const [one, another] = [row[0]!, row.at(-1)!]
    const level = Math.abs(one.centre.y - another.centre.y) <= coincident
    const upright = Math.abs(one.centre.x - another.centre.x) <= coincident
    if (level === upright) return []
    const [low, high, axis] = level ? ([left, right, 'x'] as const) : ([bottom, top, 'y'] as const)
    const ascending = one.centre[axis] < another.centre[axis]
    const first = ascending ? one.centre[axis] - low : high - one.centre[axis]
    const last = ascending ? high - another.centre[axis] : another.centre[axis] - low
    const spaces = row.length - 1
    const spacing = Math.abs(another.centre[axis] - one.centre[axis]) / spaces
    const difference = Math.abs(first - last)
    if (first < 0 || last < 0 || difference <= printable) return []
    if (difference > spaces * slip + coincident || difference > spacing / 2) return []
    return [
      {
        rule: 'row-uneven',
        severity: 'warning',
        places: [placeOfCut(part, one.feature)],
        measured: mm(difference),
        limit: mm(0),
        facts: {
          first: mm(first),
          last: mm(last),
          spacing: mm(spacing),
          even: mm((high - low - 2 * first) / spaces),
        },
      },
    ]
  })
}

/** The rows of a plane, their holes in order. */
function rowsOf(holes: readonly HoleCut[]): readonly (readonly HoleCut[])[] {
  const rows = new Map<string, HoleCut[]>()
  for (const hole of holes) {
    const { row, cut, face } = hole.feature
    if (row?.pattern !== 'row' || row.count < 2) continue
    const key = `${cut} ${face}`
    const members = rows.get(key) ?? []
    rows.set(key, members)
    members.push(hole)
  }
  return [...rows.values()]
}
