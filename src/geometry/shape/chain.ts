import { coincident } from '../../number/tolerance.ts'
import type { Contour } from './contour.ts'
import { failure, type Outcome, success } from './outcome.ts'
import { distance, type Point } from './point.ts'
import { type Segment, withEnds } from './segment.ts'

/**
 * One contour of segments that follow one another. Ends that lie within `coincident` of each other become one
 * shared point, the end of the earlier segment.
 *
 * Fails with reason `gap` where two neighbours (or, in a closed contour, the last and the first) do not meet,
 * and with `empty` for no segments.
 */
export function chain(segments: readonly Segment[], closed: boolean): Outcome<Contour> {
  const fail = (reason: string, facts: Record<string, number>) =>
    failure({ operation: 'chain', reason, facts, input: { segments, closed } })
  const count = segments.length
  if (count === 0) return fail('empty', {})
  const starts: Point[] = []
  for (let i = 0; i < count; i++) {
    const before = i > 0 ? segments[i - 1] : closed ? segments[count - 1] : undefined
    const start = segments[i]!.from
    if (before === undefined) {
      starts.push(start)
      continue
    }
    const gap = distance(before.to, start)
    if (!(gap <= coincident)) return fail('gap', { segment: i, x: start.x, y: start.y, gap })
    starts.push(before.to)
  }
  const joined = segments.map((s, i): Segment => (s.from === starts[i] ? s : withEnds(s, starts[i]!, s.to)))
  return success({ segments: joined, closed })
}
