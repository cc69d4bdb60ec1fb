import type { Place } from '../../finding/finding.ts'
import type { Missing } from '../../model/feature.ts'
import { placeOfFeature, placeOfPart } from '../place.ts'
import type { Subject } from '../subject/subject.ts'

/** A size that the drawing does not give, with what it is a size of. */
export type MissingSize = { readonly place: Place; readonly what: string; readonly wanted: string }

/** A size by what it measures, which is what its name begins with: "radius of the top-left corner". */
export type Measure = 'radius' | 'diameter' | 'other'

export function missingSizes({ model, parts }: Subject, measure: Measure): readonly MissingSize[] {
  const ofParts = [...model.undrawn, ...parts.map(({ part }) => part)].flatMap(part =>
    named(part.missing).map(wanted => ({ place: placeOfPart(part), what: 'part', wanted })),
  )
  const ofCuts = parts.flatMap(({ part }) =>
    part.drawn.features.flatMap(feature => {
      const { shape } = feature
      if (shape.kind !== 'unplaced') return []
      const place = placeOfFeature(part, feature)
      return named(shape.missing).map(wanted => ({ place, what: shape.what, wanted }))
    }),
  )
  return [...ofParts, ...ofCuts].filter(({ wanted }) => measureOf(wanted) === measure)
}

function named(missing: readonly Missing[]): readonly string[] {
  return missing.flatMap(m => (m.kind === 'size' ? [m.name] : []))
}

function measureOf(name: string): Measure {
  if (name.startsWith('radius')) return 'radius'
  return name.startsWith('diameter') ? 'diameter' : 'other'
}
