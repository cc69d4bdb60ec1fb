import type { FindingOf, Place, Severity } from '../../finding/finding.ts'
import { hullOfPoints } from '../../geometry/solid/body.ts'
import { along, midpoint3, type Point3 } from '../../geometry/solid/point3.ts'
import { circleAbout } from '../../geometry/solid/ring.ts'
import { apart } from '../../geometry/solid/separation.ts'
import type { Placed } from '../../model/feature.ts'
import type { Bored } from '../../model/inside/bored.ts'
import type { Hollow } from '../../model/inside/hollow.ts'
import { goesThrough } from '../../model/inside/stretches.ts'
import { coincident } from '../../number/tolerance.ts'
import { count, mm, wordFor } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'
import { isBored } from '../subject/is-bored.ts'
import type { Outward } from '../subject/outward.ts'
import type { PartAtHand } from '../subject/subject.ts'
import { worstOfEach } from '../worst-of-each.ts'
import { landsOn } from './lands-on.ts'
import { depthPlace, placeAbove } from './spot.ts'

/** A hole that comes out of the wood on its way: in a slot, groove or notch, at a bevel, or at a side that it leans to. */
export const holeComesOut: Rule<'hole-comes-out'> = {
  find: ({ parts }) =>
    parts.flatMap(atHand => {
      const out = [...inHollows(atHand), ...outside(atHand)]
      return worstOfEach(
        out,
        ({ bored, into, cut }) => `${bored.feature.cut} ${bored.face.id} ${into} ${cut?.id ?? ''}`,
        ({ by, rim }) => by + (rim === 'part' ? 1 : 0),
      ).map(({ worst, count: alike }): FindingOf<'hole-comes-out'> => {
        const { bored, into, cut, by, rim, at } = worst
        const { part } = atHand
        const other: readonly Place[] = cut === undefined ? [] : [placeAbove(part, cut, at)]
        return {
          rule: 'hole-comes-out',
          severity: severityOf(worst),
          places: [placeAbove(part, bored.feature, at), ...other],
          measured: mm(by),
          limit: mm(0),
          facts: { ...depthPlace(part, at), into, rim, count: count(alike) },
        }
      })
    }),
  explanation: {
    purpose:
      'A bit that comes out of the wood with part of its rim has nothing to hold it there and wanders; the wood round it breaks away. A hole that goes right through a slot, groove or notch with all of its rim, as for a pin, is left alone.',
    limit: () => 'no hole comes out but where it is meant to',
    origin: `true distances between the body that the bit takes away and the outside of the wood; ${commonPractice}`,
  },
}

type Out = {
  readonly bored: Bored
  /** What the maker calls what it comes out at, and the cut that is. */
  readonly into: string
  readonly cut?: Placed
  readonly by: number
  readonly rim: 'whole' | 'part'
  readonly at: Point3
}

function inHollows({ inside }: PartAtHand): readonly Out[] {
  return inside.encounters.flatMap((encounter): Out[] => {
    const { first, second, distance, overlap, places } = encounter
    if (distance > 0 || isBored(second) || landsOn(encounter) !== undefined) return []
    if (meets([first.axis.from], second)) return []
    const rim = rimLines(first).every(line => meets(line, second)) ? 'whole' : 'part'
    if (rim === 'whole' && first.through && goesOnBehind(second)) return []
    return [
      {
        bored: first,
        into: wordFor(second.feature),
        cut: second.feature,
        by: overlap,
        rim,
        at: midpoint3(...places),
      },
    ]
  })
}

function meets(points: readonly Point3[], { body }: Hollow): boolean {
  return apart(hullOfPoints(points), body, { maxDeviation: coincident, reach: coincident }) !== undefined
}

/** Beyond a slot or groove there is wood again: a hole for a pin goes right through it. At an arris there is none. */
function goesOnBehind({ feature: { shape } }: Hollow): boolean {
  return shape.kind === 'pocket' || shape.kind === 'groove'
}

/** As many lines along the flank of a hole tell whether all of its rim comes out. */
const linesRound = 16

function rimLines({ axis, radius, depth }: Bored): readonly (readonly [Point3, Point3])[] {
  const { centre, u, v } = circleAbout(axis.from, axis.into, radius)
  return Array.from({ length: linesRound }, (_, i) => {
    const turn = (2 * Math.PI * i) / linesRound
    const start = along(along(centre, u, Math.cos(turn)), v, Math.sin(turn))
    return [start, along(start, axis.into, depth)] as const
  })
}

function outside({ inside }: PartAtHand): readonly Out[] {
  return inside.outward.filter(comesOut).flatMap(({ bored, wall, clear, at }): Out[] => {
    const rim = goesThrough(bored.bar, wall) ? 'whole' : 'part'
    // right through a notch, as the pin of a hinge goes
    if (wall.cut !== undefined && rim === 'whole' && bored.through) return []
    const into = wall.cut === undefined ? wall.name : wordFor(wall.cut)
    return [{ bored, into, ...(wall.cut === undefined ? {} : { cut: wall.cut }), by: -clear, rim, at }]
  })
}

/** A stopped hole that comes out at its end is too deep, which is a rule of its own. */
function comesOut({ clear, where }: Outward): boolean {
  return clear <= 0 && where !== 'end'
}

function severityOf({ cut }: Out): Severity {
  return cut === undefined ? 'error' : 'warning'
}
