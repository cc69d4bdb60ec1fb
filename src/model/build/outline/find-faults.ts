import { type ContourFacts, contourFacts, type SegmentPlace } from '../../../geometry/facts/contour-facts.ts'
import type { Contour } from '../../../geometry/shape/contour.ts'
import type { OutlinePlan } from '../../../plan/plan.ts'
import type { OutlineFault } from '../../shape-facts.ts'

/** More of them than these help nobody: the first ones show what is wrong. */
const mostFaults = 10

/** What keeps a contour from bounding a piece of wood. Every edge has a name here, if only by its number. */
export function findFaults(contour: Contour, { source }: OutlinePlan): readonly OutlineFault[] {
  const facts = contourFacts([contour])
  const named = (places: readonly SegmentPlace[]) => places.map(place => edgeOf(contour, place))
  const crossings = facts.crossings.map(
    ({ segments, point }): OutlineFault => ({ kind: 'crossing', edges: named(segments), at: point, source }),
  )
  const doubled = facts.doubled.map(
    ({ segments, from }): OutlineFault => ({ kind: 'doubled', edges: named(segments), at: from, source }),
  )
  return [...doubled, ...crossings, ...withoutArea(facts, source)].slice(0, mostFaults)
}

function withoutArea({ doubled, directions }: ContourFacts, source: OutlinePlan['source']): OutlineFault[] {
  return doubled.length === 0 && directions[0] === 'none' ? [{ kind: 'doubled', edges: [], source }] : []
}

function edgeOf({ segments }: Contour, { segment }: SegmentPlace): string {
  return segments[segment]?.tag ?? 'an edge'
}
