import type { FindingOf } from '../finding/finding.ts'
import type { Rule } from './rule.ts'

/** A hole, row, slot or notch that the plan does not put anywhere; it says which distances are wanted. */
export const positionMissing: Rule<'position-missing'> = model =>
  model.parts.flatMap(part =>
    part.drawn.features.flatMap((feature): FindingOf<'position-missing'>[] => {
      if (feature.shape.kind !== 'unplaced') return []
      const wanted = feature.shape.missing.flatMap(m =>
        m.kind === 'distance' ? [m.between.join(' or ')] : [],
      )
      if (wanted.length === 0) return []
      return [
        {
          rule: 'position-missing',
          severity: 'error',
          places: [{ source: feature.source, part: part.id, feature: feature.id, side: feature.face }],
          facts: { what: feature.shape.what, wanted: wanted.join(', and one from ') },
        },
      ]
    }),
  )
