import { contourBounds, middleOfBounds, regionBounds } from '../../geometry/measure/bounds.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { along, dot, type Point3 } from '../../geometry/solid/point3.ts'
import { isPlaced, type Mouth, type Placed } from '../../model/feature.ts'
import { faceOf } from '../../model/part.ts'
import { toPart } from '../../model/pose.ts'
import { shapeBounds } from '../../model/shape-bounds.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Workshop } from '../../workshop/workshop.ts'
import { placeAbove } from '../inside/spot.ts'
import { isOfRow, mm, wordFor } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'
import { type Cut, depthOf, type HoleCut, isHole } from '../subject/cut.ts'
import type { PartAtHand } from '../subject/subject.ts'
import { worstOfEach } from '../worst-of-each.ts'
import { woodUnder } from './wood-under.ts'

/** A stopped hole, mortise, groove, rebate, chamfer or engraving that comes out on the other side, by the point of the bit perhaps, or nearly does. */
export const tooDeep: Rule<'too-deep'> = {
  find: ({ parts, workshop }) =>
    parts.flatMap(atHand => {
      const deep = [
        ...deepBores(atHand, workshop),
        ...deepFloors(atHand, workshop),
        ...deepEngravings(atHand, workshop),
      ]
      const worst = worstOfEach(
        deep,
        ({ feature }) => `${feature.cut} ${feature.face}`,
        ({ left }) => -left,
      )
      return worst.map(({ worst: { feature, what, depth, available, point, left, limit, at } }) => {
        const place = placeAbove(atHand.part, feature, at)
        return {
          rule: 'too-deep',
          severity: left <= coincident ? 'error' : 'warning',
          places: [isOfRow(feature) ? { ...place, feature: feature.cut } : place],
          measured: mm(left),
          limit: mm(limit),
          facts: { what, depth: mm(depth), available: mm(available), point: mm(point) },
        }
      })
    }),
  explanation: {
    purpose:
      'The depth of a stopped hole is that of its full diameter; the point of the bit goes deeper. Where too little wood is left under it, the point shows on the other side, or the floor breaks out when a pin is driven in.',
    limit: ({ clear, bits }, show) =>
      `${show(clear.underPoint)} of wood under the point of a ${bits.point} bit, and as much under an engraving, or on a thin part half of its wood`,
    origin: `${commonPractice}; a twist drill's point is (D/2) × cot(A/2) long, by calculation`,
  },
}

type Deep = {
  readonly feature: Placed
  readonly what: string
  /** All four straight toward the outside that is ahead, in millimetres. */
  readonly depth: number
  readonly available: number
  readonly point: number
  readonly left: number
  /** What is wanted of that. */
  readonly limit: number
  /** Where the wood is thinnest. */
  readonly at: Point3
}

/**
 * The true distance from the end of a stopped hole, its point included, to whatever outside of the wood is ahead of it.
 * One that leans goes less deep, but the rim of its floor may be deeper than its point.
 */
function deepBores({ inside }: PartAtHand, { clear }: Workshop): readonly Deep[] {
  return inside.outward.flatMap(({ bored, wall, where, ahead, clear: left, at }): Deep[] => {
    if (where !== 'end' || !ahead || left >= clear.underPoint - coincident) return []
    const straight = Math.min(1, dot(wall.plane.normal, bored.axis.into))
    const depth = bored.depth * straight
    const point = Math.max(bored.tip * straight, bored.radius * Math.sqrt(1 - straight * straight))
    const { feature } = bored
    const available = left + depth + point
    return [{ feature, what: wordFor(feature), depth, available, point, left, limit: clear.underPoint, at }]
  })
}

function deepFloors(atHand: PartAtHand, { clear }: Workshop): readonly Deep[] {
  return atHand.planes.flatMap(plane =>
    [...plane.cuts, ...plane.eased].flatMap(cut =>
      floorsOf(cut).flatMap(({ what, at, depth }): Deep[] => {
        const available = woodUnder(atHand, plane, at)
        const left = available - depth
        // where there is no wood at all the cut lies outside the part, which is another rule's business
        if (available <= coincident || left >= clear.underPoint - coincident) return []
        const { pose } = plane.face
        const floor = along(toPart(pose, at), pose.out, -depth)
        return [
          {
            feature: cut.feature,
            what,
            depth,
            available,
            point: 0,
            left,
            limit: clear.underPoint,
            at: floor,
          },
        ]
      }),
    ),
  )
}

/** An engraving whose depth the plan gives, under the middle of its letters or of each of its lines. */
function deepEngravings(atHand: PartAtHand, { clear }: Workshop): readonly Deep[] {
  const { drawn } = atHand.part
  return drawn.features.filter(isPlaced).flatMap((feature): readonly Deep[] => {
    const depth = engravedDepth(feature)
    if (depth === undefined) return []
    const face = faceOf(drawn, feature.face)
    return middlesOf(feature).flatMap((at): readonly Deep[] => {
      const available = woodUnder(atHand, { face }, at)
      const left = available - depth
      // no pin is driven in under a letter, and a thin plate bears one that is half as deep
      const limit = Math.min(clear.underPoint, available / 2)
      if (available <= coincident || left >= limit - coincident) return []
      const floor = along(toPart(face.pose, at), face.pose.out, -depth)
      return [{ feature, what: wordFor(feature), depth, available, point: 0, left, limit, at: floor }]
    })
  })
}

function engravedDepth({ shape }: Placed): number | undefined {
  const isEngraved = shape.kind === 'engraved-lines' || shape.kind === 'engraved-text'
  return isEngraved ? shape.depth?.mm : undefined
}

function middlesOf({ shape }: Placed): readonly Point[] {
  const paths = shape.kind === 'engraved-lines' ? shape.paths.map(contourBounds) : [shapeBounds(shape)]
  return paths.map(middleOfBounds)
}

type Floor = Pick<Deep, 'what' | 'depth'> & { readonly at: Point }

/** The flat floors: of a mortise, and of the counterbore of a hole that goes through. */
function floorsOf(cut: Cut): readonly Floor[] {
  if (!isHole(cut)) {
    const depth = depthOf(cut.feature.shape)
    return depth === undefined ? [] : [{ what: wordFor(cut.feature), at: middleOf(cut), depth }]
  }
  const { mouth, depth } = cut.bore
  return mouth?.kind === 'counterbore' && depth === 'through' ? [floorOfCounterbore(cut, mouth)] : []
}

function floorOfCounterbore(
  { bore, centre }: HoleCut,
  mouth: Extract<Mouth, { readonly kind: 'counterbore' }>,
): Floor {
  const { angle, toward } = bore.lean ?? { angle: 0, toward: 0 }
  const aside = mouth.depth.mm * Math.sin(angle)
  return {
    what: mouth.kind,
    at: { x: centre.x - aside * Math.cos(toward), y: centre.y - aside * Math.sin(toward) },
    depth: mouth.depth.mm * Math.cos(angle) + (mouth.diameter.mm / 2) * Math.sin(angle),
  }
}

function middleOf(cut: Cut): Point {
  return middleOfBounds(regionBounds(cut.region))
}
