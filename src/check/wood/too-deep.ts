import { regionBounds } from '../../geometry/measure/bounds.ts'
import { along, type Point3 } from '../../geometry/solid/point3.ts'
import type { Placed } from '../../model/feature.ts'
import { toPart } from '../../model/pose.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Workshop } from '../../workshop/workshop.ts'
import { comesOut } from '../inside/hole-comes-out.ts'
import { placeAbove } from '../inside/spot.ts'
import { isOfRow, mm, wordFor } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'
import type { PartAtHand } from '../subject/subject.ts'
import { worstOfEach } from '../worst-of-each.ts'
import { woodUnder } from './wood-under.ts'

/** A stopped hole or mortise that comes out on the other side, by the point of the bit perhaps, or nearly does. */
export const tooDeep: Rule<'too-deep'> = {
  find: ({ parts, workshop }) =>
    parts.flatMap(atHand => {
      const deep = [...deepBores(atHand, workshop), ...deepHollows(atHand, workshop)]
      const worst = worstOfEach(
        deep,
        ({ feature }) => `${feature.cut} ${feature.face}`,
        ({ left }) => -left,
      )
      return worst.map(({ worst: { feature, depth, available, point, left, at } }) => {
        const place = placeAbove(atHand.part, feature, at)
        return {
          rule: 'too-deep',
          severity: left <= coincident ? 'error' : 'warning',
          places: [isOfRow(feature) ? { ...place, feature: feature.cut } : place],
          measured: mm(left),
          limit: mm(workshop.clear.underPoint),
          facts: { what: wordFor(feature), depth: mm(depth), available: mm(available), point: mm(point) },
        }
      })
    }),
  explanation: {
    purpose:
      'The depth of a stopped hole is that of its full diameter; the point of the bit goes deeper. Where too little wood is left under it, the point shows on the other side, or the floor breaks out when a pin is driven in.',
    limit: ({ clear, bits }, show) =>
      `${show(clear.underPoint)} of wood under the point of a ${bits.point} bit`,
    origin: `${commonPractice}; a twist drill's point is (D/2) × cot(A/2) long, by calculation`,
  },
}

type Deep = {
  readonly feature: Placed
  readonly depth: number
  readonly available: number
  readonly point: number
  readonly left: number
  /** Where the wood is thinnest under it. */
  readonly at: Point3
}

/** The true distance from the end of a hole, its point included, to whatever outside lies ahead of it. */
function deepBores({ inside }: PartAtHand, { clear }: Workshop): readonly Deep[] {
  return (
    inside.outward
      .filter(
        ({ where, ahead, clear: left }) => where === 'end' && ahead && left < clear.underPoint - coincident,
      )
      .filter(near => !comesOut(near))
      .map(({ bored: { feature, depth, tip, stretches }, clear: left, at }) => ({
        feature,
        depth,
        available: stretches[0]?.to.distance ?? 0,
        point: tip,
        left,
        at,
      }))
      // where there is no wood at all the cut lies outside the part, which is another rule's business
      .filter(({ available }) => available > coincident)
  )
}

function deepHollows(atHand: PartAtHand, { clear }: Workshop): readonly Deep[] {
  return atHand.planes.flatMap(plane =>
    plane.cuts.flatMap(({ feature, region }): Deep[] => {
      const { shape } = feature
      if (shape.kind === 'bore' || !('depth' in shape) || shape.depth === 'through') return []
      const depth = shape.depth.mm
      const { left, right, bottom, top } = regionBounds(region)
      const middle = { x: (left + right) / 2, y: (bottom + top) / 2 }
      const available = woodUnder(atHand, plane, middle)
      const rest = available - depth
      if (available <= coincident || rest >= clear.underPoint - coincident) return []
      const at = along(toPart(plane.face.pose, middle), plane.face.pose.out, -depth)
      return [{ feature, depth, available, point: 0, left: rest, at }]
    }),
  )
}
