import type { FindingOf } from '../finding/finding.ts'
import { discProtrusion, type Protrusion, protrusion } from '../geometry/measure/protrusion.ts'
import { rectangle } from '../geometry/shape/rectangle.ts'
import { isPlaced, type Placed } from '../model/feature.ts'
import { faceOf, type Part } from '../model/part.ts'
import type { Rule } from './rule.ts'

/** A hole, slot or notch that sticks out of the part: by how much, and past which edge. */
export const outsidePart: Rule<'outside-part'> = model =>
  model.parts.flatMap(part =>
    part.drawn.features.filter(isPlaced).flatMap((feature): FindingOf<'outside-part'>[] => {
      const out = sticksOut(part, feature)
      if (out === undefined) return []
      return [
        {
          rule: 'outside-part',
          severity: 'error',
          places: [{ source: feature.source, part: part.id, feature: feature.id, side: feature.face }],
          measured: { value: out.by, unit: 'mm' },
          limit: { value: 0, unit: 'mm' },
          facts: { what: kinds[feature.shape.kind], beyond: out.beyond ?? 'edge' },
        },
      ]
    }),
  )

const kinds = { bore: 'hole', pocket: 'slot', 'cut-out': 'cut-out', 'edge-cut': 'notch' } as const

function sticksOut(part: Part, { face, shape }: Placed): Protrusion | undefined {
  const wood = faceOf(part.drawn, face).region
  switch (shape.kind) {
    case 'bore':
      return discProtrusion(shape.centre, shape.diameter.mm / 2, wood)
    case 'pocket':
    case 'cut-out':
      return protrusion(shape.region, wood)
    case 'edge-cut':
      // a notch may take a rounded corner with it, so it is held against the plain rectangle
      return protrusion(
        shape.region,
        rectangle({ left: 0, bottom: 0, right: part.length.mm, top: part.width.mm }),
      )
  }
}
