import type { FindingOf, Place } from '../../finding/finding.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Workshop } from '../../workshop/workshop.ts'
import { count, mm, placeOfFeature, wordFor } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'
import { type Cut, isHole, shareDepth } from '../subject/cut.ts'
import { woodToEased } from '../subject/eased.ts'
import { pairName } from '../subject/encounters.ts'
import type { Plane } from '../subject/plane.ts'
import type { PartAtHand } from '../subject/subject.ts'
import { worstOfEach } from '../worst-of-each.ts'
import { woodBetween, woodToEdge } from './apart.ts'
import { clearBeside, clearInWords, severityOfThin } from './limits.ts'
import { nearPairs } from './pairs.ts'
import { crossOnPurpose, isRun, woodBeside } from './runs.ts'

/** Too little wood between two cuts, or between a slot or cut-out and the edge of the part. */
export const wallTooThin: Rule<'wall-too-thin'> = {
  find: ({ parts, workshop }) =>
    parts.flatMap(atHand => atHand.planes.flatMap(plane => thinWalls(atHand, plane, workshop))),
  explanation: {
    purpose:
      'A thin wall between two holes splits when the second one is bored, and one beside a slot breaks out under the chisel or the saw.',
    limit: (workshop, show) =>
      `between holes ${clearInWords(workshop, show)}; beside a slot, a groove or a cut-out ${show(workshop.wall)}`,
    origin: commonPractice,
  },
}

type Wall = { readonly first: Cut; readonly second?: Cut; readonly measured: number; readonly limit: number }

function thinWalls(
  { part, inside }: PartAtHand,
  plane: Plane,
  workshop: Workshop,
): readonly FindingOf<'wall-too-thin'>[] {
  const walls = [
    ...betweenCuts(plane, workshop).filter(
      // what is worse inside the wood is said there
      ({ first, second }) =>
        second === undefined || !inside.pairs.has(pairName(first.feature, second.feature)),
    ),
    ...besideEdges(plane, workshop),
  ]
  const worst = worstOfEach(
    walls,
    ({ first, second }) => `${first.feature.cut} ${second?.feature.cut ?? ''}`,
    ({ measured, limit }) => 1 - measured / limit,
  )
  return worst.map(({ worst: { first, second, measured, limit }, count: alike }) => {
    const other: readonly Place[] = second === undefined ? [] : [placeOfFeature(part, second.feature)]
    return {
      rule: 'wall-too-thin',
      severity: severityOfThin(measured, limit, workshop.clear),
      places: [placeOfFeature(part, first.feature), ...other],
      measured: mm(measured),
      limit: mm(limit),
      facts: {
        what: wordFor(first.feature),
        other: second === undefined ? 'edge' : wordFor(second.feature),
        count: count(alike),
      },
    }
  })
}

/** To the edge of the part, or to a bevel or an eased edge where that comes nearer. */
function woodToEdges({ wood, eased }: Plane, cut: Cut, limit: number): number {
  const toEdge = isRun(cut) ? woodBeside(cut, wood, 2 * limit) : woodToEdge(cut, wood, limit)
  const slopes = isRun(cut) ? [] : eased.filter(edge => shareDepth(cut, edge))
  const near = slopes.map(edge => woodToEased(cut, edge))
  return Math.min(toEdge, ...near)
}

/** A notch is an edge, and the wood between it and a hole is the rule of holes near edges. */
function betweenCuts({ piled }: Plane, workshop: Workshop): readonly Wall[] {
  const inside = piled.distinct.filter(({ feature }) => feature.shape.kind !== 'edge-cut')
  const reach = Math.max(workshop.wall, ...inside.map(cut => clearBeside(cut, workshop)))
  return nearPairs(inside, reach).flatMap(([first, second]) => {
    const limit = Math.max(clearBeside(first, workshop), clearBeside(second, workshop))
    const measured = woodBetween(first, second)
    // what meets has a rule of its own
    const thin = measured > coincident && measured < limit - coincident
    return thin && !crossOnPurpose(first, second) ? [{ first, second, measured, limit }] : []
  })
}

function besideEdges(plane: Plane, workshop: Workshop): readonly Wall[] {
  // a rebate takes its edge away, and a notch is one
  const openings = plane.cuts.filter(
    cut => !isHole(cut) && !['edge-cut', 'rebate'].includes(cut.feature.shape.kind),
  )
  return openings.flatMap(first => {
    const limit = workshop.wall
    const measured = woodToEdges(plane, first, limit)
    // a slot that runs out at an end is open there, and one that sticks out has a rule of its own
    const thin = measured > coincident && measured < limit - coincident
    return thin && !plane.out.has(first) ? [{ first, measured, limit }] : []
  })
}
