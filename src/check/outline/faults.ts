import type { Place } from '../../finding/finding.ts'
import type { OutlineFault } from '../../model/shape-facts.ts'
import { mm, placeOfFeature, placeOfPart } from '../place.ts'
import type { Subject } from '../subject/subject.ts'

/** A fault of an outline, with the part or the cut-out that has it. */
export type OutlineFound = {
  readonly fault: OutlineFault
  readonly place: Place
  readonly what: 'part' | 'cut-out'
}

/** The faults of one kind of all outlines that are drawn. */
export function outlineFaults(
  { model, parts }: Subject,
  kind: OutlineFault['kind'],
): readonly OutlineFound[] {
  const ofParts = model.undrawn.flatMap(part =>
    part.outlineFaults.map(fault => ({ fault, place: placeOfPart(part), what: 'part' as const })),
  )
  const ofCutOuts = parts.flatMap(({ part }) =>
    part.drawn.features.flatMap(feature => {
      if (feature.shape.kind !== 'unplaced') return []
      const place = placeOfFeature(part, feature)
      const faults = feature.shape.missing.flatMap(m => (m.kind === 'outline' ? m.faults : []))
      return faults.map(fault => ({ fault, place, what: 'cut-out' as const }))
    }),
  )
  return [...ofParts, ...ofCutOuts]
    .filter(({ fault }) => fault.kind === kind)
    .map(({ fault, place, what }) => ({ fault, place: { ...place, source: fault.source }, what }))
}

/** What is said of two edges that meet where they should not. */
export function meeting({ fault: { edges, at }, place, what }: OutlineFound) {
  return {
    severity: 'error' as const,
    places: [place],
    facts: {
      what,
      edges: edges.join(' and '),
      ...(at === undefined ? {} : { left: mm(at.x), bottom: mm(at.y) }),
    },
  }
}
