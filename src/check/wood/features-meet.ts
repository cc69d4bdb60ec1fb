import type { FindingOf, Severity } from '../../finding/finding.ts'
import { difference, intersection } from '../../geometry/boolean/index.ts'
import { boundsOfRegions } from '../../geometry/measure/bounds.ts'
import { distance } from '../../geometry/shape/point.ts'
import type { Part } from '../../model/part.ts'
import { coincident } from '../../number/tolerance.ts'
import { mm, placeOfFeature, wordFor } from '../place.ts'
import type { Rule } from '../rule.ts'
import { type Cut, isHole } from '../subject/cut.ts'
import { nearestLayers } from './apart.ts'
import { nearPairs } from './pairs.ts'

/** Two cuts of one face that run into each other. Front and back are one face to what goes so deep that it meets. */
export const featuresMeet: Rule<'features-meet'> = {
  find: ({ parts }) =>
    parts.flatMap(({ part, planes }) =>
      planes.flatMap(({ cuts }) =>
        nearPairs(cuts, coincident)
          .map(([a, b]) => nearestLayers(a, b))
          .filter(({ apart }) => apart <= coincident)
          .flatMap(({ pair: [a, b] }) => judge(part, a, b)),
      ),
    ),
  explanation: {
    purpose:
      'A bit that meets another hole on its way wanders into it, and a slot that runs into a hole takes its rim away. Mostly one of the two is in the wrong place. What is wanted so is left alone: a narrow hole deeper inside a wide one, a mortise in steps.',
    limit: () =>
      'two holes that overlap are an error, a hole in another cut a warning, two other cuts a note',
    origin: 'true distances between the cuts, as seen on the face',
  },
}

function judge(part: Part, a: Cut, b: Cut): readonly FindingOf<'features-meet'>[] {
  const inner = isWithin(a, b) ? a : isWithin(b, a) ? b : undefined
  const outer = inner === a ? b : a
  // a counterbore, or a mortise in steps
  if (inner !== undefined && inner.to - inner.from > outer.to - outer.from + coincident) return []
  const [first, second] = inner === undefined ? [a, b] : [inner, outer]
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
    return Math.min(Math.max(0, -nearestLayers(a, b).apart), 2 * a.disc.radius, 2 * b.disc.radius)
  }
  const common = intersection([a.region], [b.region])
  if (!common.ok || common.value.length === 0) return 0
  const { left, right, bottom, top } = boundsOfRegions(common.value)
  return Math.min(right - left, top - bottom)
}
