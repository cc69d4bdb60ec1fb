import { regionBounds } from '../../geometry/measure/bounds.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { tipLength } from '../../model/bore/tip.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Bits, Workshop } from '../../workshop/workshop.ts'
import { isOfRow, mm, placeOfCut, placeOfFeature, wordFor } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'
import { type Cut, depthOf, type HoleCut, isHole } from '../subject/cut.ts'
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
      return worst.map(({ worst: { cut, what, depth, available, point, left } }) => ({
        rule: 'too-deep',
        severity: left <= coincident ? 'error' : 'warning',
        places: [(isOfRow(cut.feature) ? placeOfCut : placeOfFeature)(atHand.part, cut.feature)],
        measured: mm(left),
        limit: mm(workshop.clear.underPoint),
        facts: { what, depth: mm(depth), available: mm(available), point: mm(point) },
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
  readonly what: string
  /** All four straight in from the face, in millimetres. */
  readonly depth: number
  readonly available: number
  readonly point: number
  readonly left: number
}

function tooDeepIn(atHand: PartAtHand, plane: Plane, cut: Cut, { bits, clear }: Workshop): readonly Deep[] {
  return floorsOf(cut, bits).flatMap(({ what, at, depth, point }) => {
    const available = woodUnder(atHand, plane, at)
    // where there is no wood at all the cut lies outside the part, which is another rule's business
    if (available <= coincident) return []
    const left = available - depth - point
    return left < clear.underPoint - coincident ? [{ cut, what, depth, available, point, left }] : []
  })
}

type Floor = Pick<Deep, 'what' | 'depth' | 'point'> & { readonly at: Point }

/** Where a cut ends in the wood: a stopped hole or mortise, and the counterbore of any hole. */
function floorsOf(cut: Cut, bits: Bits): readonly Floor[] {
  if (!isHole(cut)) {
    const depth = depthOf(cut.feature.shape)
    return depth === undefined ? [] : [{ what: wordFor(cut.feature), at: middleOf(cut), depth, point: 0 }]
  }
  const { bore } = cut
  const stopped =
    bore.depth === 'through'
      ? []
      : [floorOf(cut, wordFor(cut.feature), bore.depth.mm, cut.radius, tipLength(bore, bits))]
  const { mouth } = bore
  if (mouth?.kind !== 'counterbore' || bore.depth !== 'through') return stopped
  return [floorOf(cut, mouth.kind, mouth.depth.mm, mouth.diameter.mm / 2, 0)]
}

/**
 * The floor of a bore straight in from the face, under the place that its point comes to. One that leans goes less
 * deep, but the rim of its floor may be deeper than its point.
 */
function floorOf(
  { bore, centre }: HoleCut,
  what: string,
  deep: number,
  radius: number,
  point: number,
): Floor {
  const { angle, toward } = bore.lean ?? { angle: 0, toward: 0 }
  const depth = deep * Math.cos(angle)
  const aside = (deep + point) * Math.sin(angle)
  return {
    what,
    at: { x: centre.x - aside * Math.cos(toward), y: centre.y - aside * Math.sin(toward) },
    depth,
    point: Math.max(point * Math.cos(angle), radius * Math.sin(angle)),
  }
}

function middleOf(cut: Cut): Point {
  const { left, right, bottom, top } = regionBounds(cut.region)
  return { x: (left + right) / 2, y: (bottom + top) / 2 }
}
