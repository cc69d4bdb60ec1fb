import { type FindingOf, type Severity, severities } from '../../finding/finding.ts'
import { difference, intersection } from '../../geometry/boolean/index.ts'
import { boundsOfRegions } from '../../geometry/measure/bounds.ts'
import { distance } from '../../geometry/shape/point.ts'
import type { Part } from '../../model/part.ts'
import { coincident } from '../../number/tolerance.ts'
import { mm, placeOfFeature, wordFor } from '../place.ts'
import type { Rule } from '../rule.ts'
import { type Cut, isHole, isStraight, shareDepth } from '../subject/cut.ts'
import { type Eased, woodToEased } from '../subject/eased.ts'
import { pairName } from '../subject/encounters.ts'
import { layersBetween, woodBetween } from './apart.ts'
import { nearPairs } from './pairs.ts'
import { crossOnPurpose } from './runs.ts'

/** Two cuts of one face that run into each other. Front and back are one face to what goes so deep that it meets. */
export const featuresMeet: Rule<'features-meet'> = {
  find: ({ parts }) =>
    parts.flatMap(({ part, planes, inside }) =>
      planes.flatMap(({ cuts, eased }) => [
        ...nearPairs(cuts, coincident)
          .filter(([a, b]) => !crossOnPurpose(a, b))
          // what is worse inside the wood is said there
          .filter(([a, b]) => !inside.pairs.has(pairName(a.feature, b.feature)))
          .flatMap(([a, b]) => worstMeeting(part, a, b)),
        ...intoSlopes(part, cuts, eased),
        ...easedTwice(part, eased),
      ]),
    ),
  explanation: {
    purpose:
      'A bit that meets another hole on its way wanders into it, and a slot that runs into a hole takes its rim away. Mostly one of the two is in the wrong place. What is wanted so is left alone: a narrow hole deeper inside a wide one, a mortise in steps.',
    limit: () =>
      'two holes that overlap are an error, a hole in another cut or in a bevelled or eased edge a warning, two other cuts a note; grooves and rebates may cross each other and run over notches',
    origin: 'true distances between the cuts, as seen on the face',
  },
}

/** A hole whose rim runs out into a bevel or an eased edge. */
function intoSlopes(
  part: Part,
  cuts: readonly Cut[],
  eased: readonly Eased[],
): readonly FindingOf<'features-meet'>[] {
  return cuts.filter(isHole).flatMap(cut =>
    eased.flatMap((edge): FindingOf<'features-meet'>[] => {
      const clear = shareDepth(cut, edge) ? woodToEased(cut, edge) : Infinity
      if (clear > coincident) return []
      return [
        {
          rule: 'features-meet',
          severity: 'warning',
          places: [placeOfFeature(part, cut.feature), placeOfFeature(part, edge.feature)],
          measured: mm(Math.min(Math.max(0, -clear), 2 * cut.radius)),
          limit: mm(0),
          facts: {
            what: wordFor(cut.feature),
            other: wordFor(edge.feature),
            how: clear < -coincident ? 'overlaps' : 'touches',
          },
        },
      ]
    }),
  )
}

/** One arris that is eased in two ways; that easings of two edges meet at a corner is meant so. */
function easedTwice(part: Part, eased: readonly Eased[]): readonly FindingOf<'features-meet'>[] {
  return nearPairs(eased, coincident).flatMap(([a, b]): FindingOf<'features-meet'>[] => {
    const [one, other] = [a.shape.edge, b.shape.edge]
    const isSame = one === other || one === 'all' || other === 'all'
    if (!isSame || a.feature.cut === b.feature.cut || woodBetween(a, b) > coincident) return []
    return [
      {
        rule: 'features-meet',
        severity: 'note',
        places: [placeOfFeature(part, a.feature), placeOfFeature(part, b.feature)],
        measured: mm(overlapOf(a, b)),
        limit: mm(0),
        facts: { what: wordFor(a.feature), other: wordFor(b.feature), how: 'overlaps' },
      },
    ]
  })
}

/** The worst that there is to say of two cuts: of the hole, or its mouth, with the other or its mouth. */
function worstMeeting(part: Part, a: Cut, b: Cut): readonly FindingOf<'features-meet'>[] {
  const meeting = layersBetween(a, b).filter(({ apart }) => apart <= coincident)
  const found = meeting.flatMap(({ pair }) => judge(part, ...pair))
  const rank = ({ severity }: (typeof found)[number]) => severities.indexOf(severity)
  return found
    .toSorted((p, q) => rank(p) - rank(q) || (q.measured?.value ?? 0) - (p.measured?.value ?? 0))
    .slice(0, 1)
}

function judge(part: Part, a: Cut, b: Cut): readonly FindingOf<'features-meet'>[] {
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
      rule: 'features-meet',
      severity: severityOf(a, b, inner !== undefined),
      places: [placeOfFeature(part, first.feature), placeOfFeature(part, second.feature)],
      measured: mm(overlap),
      limit: mm(0),
      facts: {
        what: wordFor(first.feature),
        other: wordFor(second.feature),
        how: inner !== undefined ? 'lies within' : overlap > coincident ? 'overlaps' : 'touches',
      },
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
