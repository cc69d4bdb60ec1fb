import type { FindingOf } from '../../finding/finding.ts'
import { narrowestNeck } from '../../geometry/measure/neck.ts'
import { thinnestWall } from '../../geometry/measure/separation.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import { midpoint, type Point } from '../../geometry/shape/point.ts'
import type { Part } from '../../model/part.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Neck as NeckLimits, Workshop } from '../../workshop/workshop.ts'
import { mm, placeOfPart } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'
import { bestLie } from '../subject/lie.ts'
import type { PartAtHand } from '../subject/subject.ts'
import { worstOfEach } from '../worst-of-each.ts'
import { severityOfThin } from './limits.ts'

/** A place where a part is so narrow that it snaps, sooner where the grain runs across it. */
export const neckTooNarrow: Rule<'neck-too-narrow'> = {
  find: ({ parts, workshop }) => parts.flatMap(atHand => narrowNecks(atHand, workshop)),
  explanation: {
    purpose:
      'A narrow neck snaps when the part is sawn, sanded or dropped. With the grain running through it, it holds; with the grain across it (short grain) it breaks like a biscuit. Grain runs along the longest dimension.',
    limit: ({ neck }, show) =>
      `${show(neck.along)} where the grain runs through the neck, ${show(neck.across)} where it runs across, in between by the angle`,
    origin: `${commonPractice}; in between by Hankinson's formula for strength at an angle to the grain, from memory`,
  },
}

/** `slant` lies between the cut straight across the neck and the grain: 0 is short grain, a quarter turn long. */
type Found = { readonly at: Point; readonly width: number; readonly slant: number }

function narrowNecks(
  { part, planes }: PartAtHand,
  workshop: Workshop,
): readonly FindingOf<'neck-too-narrow'>[] {
  const wood = planes[0]?.wood ?? []
  const narrow = wood
    .flatMap(region => [...necksOf(part, region, workshop.neck), ...wallOf(region)])
    .map(neck => ({ ...neck, limit: neckLimit(neck.slant, workshop.neck) }))
    .filter(({ width, limit }) => width < limit - coincident)
  return worstOfEach(
    narrow,
    () => part.id,
    ({ width, limit }) => 1 - width / limit,
  ).map(({ worst: { at, width, slant, limit } }) => ({
    rule: 'neck-too-narrow',
    severity: severityOfThin(width, limit, workshop.clear),
    places: [{ ...placeOfPart(part), side: 'front' }],
    measured: mm(width),
    limit: mm(limit),
    facts: { grain: grainInWords(slant), left: mm(at.x), bottom: mm(at.y) },
  }))
}

/**
 * The narrowest neck, and the narrowest that runs more across the grain than along it, which may be wider and yet
 * weaker. A rectangle is as narrow as it is wide, and whoever asks for a thin strip knows it.
 */
function necksOf(part: Part, { outer }: Region, limits: NeckLimits): readonly Found[] {
  if (outer.segments.length <= 4) return []
  const region = { outer, holes: [] }
  const narrowest = narrowestNeck(region)
  // where the narrowest is wide enough for any grain, all are
  if (narrowest === undefined || narrowest.width >= Math.max(limits.along, limits.across)) return []
  const { across, grain } = bestLie(part)
  const slantOf = (direction: number) => Math.asin(Math.min(1, Math.abs(Math.sin(direction - grain))))
  const own = across - coincident
  return [narrowest, narrowestNeck(region, direction => slantOf(direction) < Math.PI / 4)].flatMap(neck =>
    neck !== undefined && neck.width < own
      ? [{ at: neck.at, width: neck.width, slant: slantOf(neck.direction) }]
      : [],
  )
}

/** Round a ring the grain runs across it somewhere, wherever it is thinnest. */
function wallOf(region: Region): readonly Found[] {
  const wall = thinnestWall(region)
  if (wall === undefined) return []
  return [{ at: midpoint(wall.first.point, wall.second.point), width: wall.distance, slant: 0 }]
}

/**
 * Source: Hankinson's formula, strength at the angle θ to the grain = P·Q / (P·sin²θ + Q·cos²θ), from memory. The
 * width that carries the same goes with its inverse, which is a mixture by sin² and cos².
 */
function neckLimit(angle: number, { along, across }: NeckLimits): number {
  const sine = Math.sin(angle)
  return along * sine * sine + across * (1 - sine * sine)
}

/** Within a sixth of a right angle of the one or the other it is called so. */
const nearlySquare = Math.PI / 12

function grainInWords(angle: number): 'along' | 'across' | 'aslant' {
  if (angle < nearlySquare) return 'across'
  return angle > Math.PI / 2 - nearlySquare ? 'along' : 'aslant'
}
