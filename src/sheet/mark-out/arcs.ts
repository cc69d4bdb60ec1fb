import { tangentAt } from '../../geometry/measure/along.ts'
import type { Contour } from '../../geometry/shape/contour.ts'
import { type Segment, withEnds } from '../../geometry/shape/segment.ts'
import { coincident } from '../../number/tolerance.ts'
import { isSharp } from './outline-lines.ts'

export function isFullCircle({ segments }: Contour): boolean {
  const [first] = segments
  return first?.kind === 'arc' && segments.every(edge => onOneCircle(first, edge))
}

/** The contour with arcs that go on along the same circle as one: a round end is made of two rounded corners. */
export function withWholeArcs(contour: Contour): Contour {
  const { segments } = contour
  if (isFullCircle(contour)) return contour
  // begun where no arc goes on
  const start = segments.findIndex((edge, i) => !onOneCircle(segments.at(i - 1)!, edge))
  const whole: Segment[] = []
  for (const edge of [...segments.slice(start), ...segments.slice(0, start)]) {
    const last = whole.at(-1)
    if (last !== undefined && onOneCircle(last, edge))
      whole[whole.length - 1] = withEnds(last, last.from, edge.to)
    else whole.push(edge)
  }
  return { ...contour, segments: whole }
}

/** Whether an edge is an arc that only rounds the corner, or the end, between two straight edges that it touches. */
export function isFillet({ segments }: Contour, index: number): boolean {
  const [before, arc, after] = [
    segments.at(index - 1)!,
    segments[index]!,
    segments[(index + 1) % segments.length]!,
  ]
  if (arc.kind !== 'arc' || before.kind !== 'line' || after.kind !== 'line') return false
  return ![
    [before, arc],
    [arc, after],
  ].some(([a, b]) => isSharp(tangentAt(a!, 1), tangentAt(b!, 0)))
}

function onOneCircle(a: Segment, b: Segment): boolean {
  return (
    a.kind === 'arc' &&
    b.kind === 'arc' &&
    a.turn === b.turn &&
    Math.hypot(a.centre.x - b.centre.x, a.centre.y - b.centre.y) < coincident &&
    Math.abs(a.radius - b.radius) < coincident
  )
}
