import type { FindingOf, Place } from '../finding/finding.ts'
import type { Missing } from '../model/feature.ts'
import type { Rule } from './rule.ts'

/** A size that the drawing does not give: of a part, of a corner, of a hole or slot. */
export const sizeMissing: Rule<'size-missing'> = model => [
  ...model.undrawn.flatMap(part => findingsFor(part.missing, { source: part.source, part: part.id }, 'part')),
  ...model.parts.flatMap(part => [
    ...findingsFor(part.missing, { source: part.source, part: part.id }, 'part'),
    ...part.drawn.features.flatMap(feature =>
      feature.shape.kind === 'unplaced'
        ? findingsFor(
            feature.shape.missing,
            { source: feature.source, part: part.id, feature: feature.id, side: feature.face },
            feature.shape.what,
          )
        : [],
    ),
  ]),
]

function findingsFor(missing: readonly Missing[], place: Place, what: string): FindingOf<'size-missing'>[] {
  return missing.flatMap((m): FindingOf<'size-missing'>[] =>
    m.kind === 'size'
      ? [{ rule: 'size-missing', severity: 'error', places: [place], facts: { what, wanted: m.name } }]
      : [],
  )
}
