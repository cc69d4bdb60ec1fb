import { regionBounds } from '../../geometry/measure/bounds.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { coincident } from '../../number/tolerance.ts'
import { pointLength } from '../../workshop/bits.ts'
import type { Workshop } from '../../workshop/workshop.ts'
import { isOfRow, mm, placeOfCut, placeOfFeature, wordFor } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'
import { type Cut, depthOf, isHole } from '../subject/cut.ts'
import type { Plane } from '../subject/plane.ts'
import type { PartAtHand } from '../subject/subject.ts'
import { worstOfEach } from '../worst-of-each.ts'
import { woodUnder } from './wood-under.ts'

/** A stopped hole, mortise, groove, rebate or chamfer that comes out on the other side, by the point of the bit perhaps, or nearly does. */
export const tooDeep: Rule<'too-deep'> = {
  find: ({ parts, workshop }) =>
    parts.flatMap(atHand => {
      const deep = atHand.planes.flatMap(plane =>
        [...plane.cuts, ...plane.eased].flatMap(cut => tooDeepIn(atHand, plane, cut, workshop)),
      )
      const worst = worstOfEach(
        deep,
        ({ cut }) => `${cut.feature.cut} ${cut.feature.face}`,
        ({ left }) => -left,
      )
      return worst.map(({ worst: { cut, depth, available, point, left } }) => ({
        rule: 'too-deep',
        severity: left <= coincident ? 'error' : 'warning',
        places: [(isOfRow(cut.feature) ? placeOfCut : placeOfFeature)(atHand.part, cut.feature)],
        measured: mm(left),
        limit: mm(workshop.clear.underPoint),
        facts: { what: wordFor(cut.feature), depth: mm(depth), available: mm(available), point: mm(point) },
      }))
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
  readonly cut: Cut
  readonly depth: number
  readonly available: number
  readonly point: number
  readonly left: number
}

function tooDeepIn(atHand: PartAtHand, plane: Plane, cut: Cut, { bits, clear }: Workshop): readonly Deep[] {
  const depth = depthOf(cut.feature.shape)
  if (depth === undefined) return []
  const available = woodUnder(atHand, plane, middleOf(cut))
  // where there is no wood at all the cut lies outside the part, which is another rule's business
  if (available <= coincident) return []
  const point = isHole(cut) ? pointLength(bits, 2 * cut.radius) : 0
  const left = available - depth - point
  return left < clear.underPoint - coincident ? [{ cut, depth, available, point, left }] : []
}

function middleOf(cut: Cut): Point {
  if (isHole(cut)) return cut.centre
  const { left, right, bottom, top } = regionBounds(cut.region)
  return { x: (left + right) / 2, y: (bottom + top) / 2 }
}
