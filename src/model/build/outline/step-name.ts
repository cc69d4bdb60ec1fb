import type { Segment } from '../../../geometry/shape/segment.ts'
import type { OutlineStep } from '../../../plan/plan.ts'

/** What the edge of a step is called in messages: its name, or its number in the order of the steps. */
export function edgeName(step: OutlineStep, index: number): string {
  return step.name?.value ?? `edge ${index + 1}`
}

/** What the corner at the end of a step is called in messages. */
export function cornerName(step: OutlineStep, index: number): string {
  return step.cornerName?.value ?? `corner ${index + 1} of the outline`
}

/** The edges with the names that the maker gave and no others. Names of our own have spaces, those of the maker never. */
export function ownNamesOnly(segments: readonly Segment[]): readonly Segment[] {
  return segments.map(segment => {
    if (segment.tag === undefined || !segment.tag.includes(' ')) return segment
    const { tag: _, ...unnamed } = segment
    return unnamed
  })
}
