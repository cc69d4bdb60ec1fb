import type { WoodFacts } from '../../finding/check-facts.ts'
import { type FindingOf, type Severity, severities } from '../../finding/finding.ts'
import { difference, intersection } from '../../geometry/boolean/index.ts'
import { boundsOfRegions } from '../../geometry/measure/bounds.ts'
import { distance } from '../../geometry/shape/point.ts'
import type { Part } from '../../model/part.ts'
import { coincident } from '../../number/tolerance.ts'
import { count, mm, placeOfFeature, wordFor } from '../place.ts'
import type { Rule } from '../rule.ts'
import { someNames } from '../some-names.ts'
import { type Cut, isHole, isStraight, shareDepth } from '../subject/cut.ts'
import { type Eased, woodToEased } from '../subject/eased.ts'
import { pairName } from '../subject/encounters.ts'
import { type Pile, pilesOf } from '../subject/piles.ts'
import { type Meeting, toldTogether } from '../told-together.ts'
import { layersBetween, woodBetween } from './apart.ts'
import { nearPairs } from './pairs.ts'
import { crossOnPurpose } from './runs.ts'

/** Two cuts of one face that run into each other. Front and back are one face to what goes so deep that it meets. */
export const featuresMeet: Rule<'features-meet'> = {
  find: ({ parts }) =>
    parts.flatMap(({ part, planes, inside }) =>
      planes.flatMap(({ cuts, piled, eased }) => {
        const meetings = [
          ...piled.piles.flatMap(inPile),
          ...nearPairs(piled.distinct, coincident)
            .filter(([a, b]) => !crossOnPurpose(a, b))
            // what is worse inside the wood is said there
            .filter(([a, b]) => !inside.pairs.has(pairName(a.feature, b.feature)))
            .flatMap(([a, b]) => worstMeeting(a, b)),
          ...intoSlopes(cuts, eased),
          ...easedTwice(eased),
        ]
        return toldTogether(meetings).map(group => findingOf(part, group))
      }),
    ),
  explanation: {
    purpose:
      'A bit that meets another hole on its way wanders into it, and a slot that runs into a hole takes its rim away. Mostly one of the two is in the wrong place. What is wanted so is left alone: a narrow hole deeper inside a wide one, a mortise in steps. Where many run into one another, as when a hole was copied and its place left as it was, that is said once, of the two that are worst.',
    limit: () =>
      'two holes that overlap are an error, a hole in another cut or in a bevelled or eased edge a warning, and so are easings from front and back that leave nothing of the edge, two other cuts a note; grooves and rebates may cross each other and run over notches',
    origin: 'true distances between the cuts, as seen on the face',
  },
}

/** Two cuts that run into each other, and how far. */
type Meets = Meeting & {
  readonly severity: Severity
  readonly overlap: number
  readonly how: WoodFacts['features-meet']['how']
}

function findingOf(part: Part, group: readonly Meets[]): FindingOf<'features-meet'> {
  const worst = worstOf(group)
  const { first, second, severity, overlap, how } = worst
  const all = [...new Set(group.flatMap(meeting => [meeting.first, meeting.second]))]
  return {
    rule: 'features-meet',
    severity,
    places: [placeOfFeature(part, first), placeOfFeature(part, second)],
    measured: mm(overlap),
    limit: mm(0),
    facts: {
      what: wordFor(first),
      other: wordFor(second),
      how,
      count: count(all.length),
      names: someNames(all.map(({ cut }) => cut)),
    },
  }
}

function worstOf([first, ...others]: readonly Meets[]): Meets {
  const rank = ({ severity }: Meets) => severities.indexOf(severity)
  return others.reduce((worst, next) => {
    const by = rank(worst) - rank(next) || next.overlap - worst.overlap
    return by > 0 ? next : worst
  }, first!)
}

/** Each with the first of its pile. */
function inPile([first, ...others]: Pile): readonly Meets[] {
  return others.flatMap(other => worstMeeting(first!, other)).map(meets => ({ ...meets, piled: true }))
}

/** A hole, slot or cut-out whose rim runs out into a bevel or an eased edge. */
function intoSlopes(cuts: readonly Cut[], eased: readonly Eased[]): readonly Meets[] {
  return cuts.filter(isOpening).flatMap(cut =>
    eased.flatMap((edge): Meets[] => {
      const clear = shareDepth(cut, edge) ? woodToEased(cut, edge) : Infinity
      if (clear > coincident) return []
      const overlap = isHole(cut) ? Math.min(Math.max(0, -clear), 2 * cut.radius) : overlapOf(cut, edge)
      return [
        {
          first: cut.feature,
          second: edge.feature,
          severity: isHole(cut) ? 'warning' : 'note',
          overlap,
          how: overlap > coincident ? 'overlaps' : 'touches',
        },
      ]
    }),
  )
}

/** What has wood all round it: a notch, a groove and a rebate run out at edges, eased or not. */
function isOpening({ feature: { shape } }: Cut): boolean {
  return shape.kind === 'bore' || shape.kind === 'pocket' || shape.kind === 'cut-out'
}

/**
 * One arris that is eased in two ways, or an edge that is eased from front and back by more than the thickness; that
 * easings of two edges meet at a corner is meant so.
 */
function easedTwice(eased: readonly Eased[]): readonly Meets[] {
  const { distinct, piles } = pilesOf(eased)
  const piled = piles.flatMap(([first, ...others]) => others.flatMap(other => bothEase(first!, other, true)))
  return [...piled, ...nearPairs(distinct, coincident).flatMap(([a, b]) => bothEase(a, b, false))]
}

function bothEase(a: Eased, b: Eased, piled: boolean): readonly Meets[] {
  const [one, other] = [a.shape.edge, b.shape.edge]
  const isSame = one === other || one === 'all' || other === 'all'
  if (!isSame || woodBetween(a, b) > coincident) return []
  const [first, second] = [a.feature, b.feature]
  if (first.face !== second.face && a.shape.kind !== 'bevel' && b.shape.kind !== 'bevel') {
    const overlap = Math.min(a.to, b.to) - Math.max(a.from, b.from)
    return [{ first, second, severity: 'warning', overlap, how: 'meets' }]
  }
  if (first.cut === second.cut) return []
  return [{ first, second, severity: 'note', overlap: overlapOf(a, b), how: 'overlaps', piled }]
}

/** The worst that there is to say of two cuts: of the hole, or its mouth, with the other or its mouth. */
function worstMeeting(a: Cut, b: Cut): readonly Meets[] {
  const meeting = layersBetween(a, b).filter(({ apart }) => apart <= coincident)
  const found = meeting.flatMap(({ pair }) => judge(...pair))
  return found.length === 0 ? [] : [worstOf(found)]
}

function judge(a: Cut, b: Cut): readonly Meets[] {
  const nested = nestedOf(a, b)
  const isDeeper = nested !== undefined && depthOf(nested.inner) > depthOf(nested.outer) + coincident
  // a counterbore, or a mortise in steps
  if (isDeeper && isStraight(nested.outer)) return []
  // a mouth is wide on the face only, and what goes down through it meets the hole below
  const inner = isDeeper ? undefined : nested?.inner
  const [first, second] = inner === b ? [b, a] : [a, b]
  const overlap = overlapOf(a, b)
  return [
    {
      first: first.feature,
      second: second.feature,
      severity: severityOf(a, b, inner !== undefined),
      overlap,
      how: inner !== undefined ? 'lies within' : overlap > coincident ? 'overlaps' : 'touches',
    },
  ]
}

function nestedOf(a: Cut, b: Cut): { readonly inner: Cut; readonly outer: Cut } | undefined {
  if (isWithin(a, b)) return { inner: a, outer: b }
  return isWithin(b, a) ? { inner: b, outer: a } : undefined
}

function depthOf({ from, to }: Cut): number {
  return to - from
}

function severityOf(a: Cut, b: Cut, within: boolean): Severity {
  if (isHole(a) && isHole(b) && !within) return 'error'
  return isHole(a) || isHole(b) ? 'warning' : 'note'
}

function isWithin(inner: Cut, outer: Cut): boolean {
  if (inner.disc && outer.disc) {
    const apart = distance(inner.disc.centre, outer.disc.centre)
    return apart + inner.disc.radius <= outer.disc.radius + coincident
  }
  const rest = difference([inner.region], [outer.region])
  return rest.ok && rest.value.length === 0
}

/** How far the one reaches into the other: the lesser side of what they have in common. */
function overlapOf(a: Cut, b: Cut): number {
  if (a.disc && b.disc) {
    return Math.min(Math.max(0, -woodBetween(a, b)), 2 * a.disc.radius, 2 * b.disc.radius)
  }
  const common = intersection([a.region], [b.region])
  if (!common.ok || common.value.length === 0) return 0
  const { left, right, bottom, top } = boundsOfRegions(common.value)
  return Math.min(right - left, top - bottom)
}
