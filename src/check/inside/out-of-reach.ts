import { isSide, sayFace } from '../../finding/face-name.ts'
import type { FindingOf } from '../../finding/finding.ts'
import { chordPoints } from '../../geometry/approximate/chords.ts'
import { along, cross, dot, length, minus, type Point3, times } from '../../geometry/solid/point3.ts'
import { circleAbout } from '../../geometry/solid/ring.ts'
import type { Placed } from '../../model/feature.ts'
import type { Bored } from '../../model/inside/bored.ts'
import { stretchesAlong } from '../../model/inside/stretches.ts'
import { wallDeviation } from '../../model/inside/walls.ts'
import { toPart } from '../../model/pose.ts'
import { coincident } from '../../number/tolerance.ts'
import { count, isOfRow, mm, placeOfCut, placeOfFeature, wordFor } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'
import type { PartAtHand } from '../subject/subject.ts'
import { worstOfEach } from '../worst-of-each.ts'

/** A cut that no straight bit gets to, or that begins where there is no wood. */
export const outOfReach: Rule<'out-of-reach'> = {
  find: ({ parts }) =>
    parts.flatMap(atHand => {
      const away = [...boresAway(atHand), ...inTheWay(atHand)]
      return worstOfEach(
        away,
        ({ feature, why }) => `${feature.cut} ${feature.face} ${why}`,
        ({ by, limit }) => limit - by,
      ).map(
        ({ worst: { feature, why, by, limit }, count: alike }): FindingOf<'out-of-reach'> => ({
          rule: 'out-of-reach',
          severity: why === 'deeper' ? 'warning' : 'error',
          places: [(isOfRow(feature) && alike > 1 ? placeOfCut : placeOfFeature)(atHand.part, feature)],
          measured: mm(by),
          limit: mm(limit),
          facts: { what: wordFor(feature), why, face: sayFace(feature.face), count: count(alike) },
        }),
      )
    }),
  explanation: {
    purpose:
      'On a shaped part a side of its bounding rectangle may lie off the wood: a hole there begins in the air, and its depth is not what the plan says. And a hole in an edge that looks at another part of the same piece has no room for bit and chuck.',
    limit: () =>
      'the wood begins at the face, and straight out from the cut there is nothing of the part; a hole that is bored through what is in the way is in reach',
    origin: commonPractice,
  },
}

type Away = {
  readonly feature: Placed
  readonly why: 'no-wood' | 'deeper' | 'in-the-way'
  readonly by: number
  readonly limit: number
}

/** Holes that begin where there is no wood. What sticks out of its face has a rule of its own. */
function boresAway({ inside, planes }: PartAtHand): readonly Away[] {
  const off: ReadonlySet<Placed> = new Set(
    planes.flatMap(({ out }) => [...out.keys()].map(({ feature }) => feature)),
  )
  const away = inside.bores.flatMap(({ feature, stretches }): Away[] => {
    const first = stretches[0]
    if (off.has(feature)) return []
    if (first === undefined) return [{ feature, why: 'no-wood', by: 0, limit: 0 }]
    const { distance } = first.from
    return distance > coincident ? [{ feature, why: 'deeper', by: distance, limit: 0 }] : []
  })
  return [...away, ...inside.missed.filter(feature => !off.has(feature)).map(noWood)]
}

function noWood(feature: Placed): Away {
  return { feature, why: 'no-wood', by: 0, limit: 0 }
}

/** Cuts of named edges that look at other wood of the part. */
function inTheWay({ inside }: PartAtHand): readonly Away[] {
  const { wood, bores, hollows } = inside
  const ways = [
    ...bores.map(bored => ({ cut: bored, into: bored.axis.into, starts: rimOf(bored), bored })),
    ...hollows.map(hollow => ({
      cut: hollow,
      into: times(hollow.face.pose.out, -1),
      starts: openingOf(hollow.feature, hollow.face.pose),
      bored: undefined,
    })),
  ]
  return ways.flatMap(({ cut: { feature, face }, into, starts, bored }) => {
    if (isSide(face.id)) return []
    const out = times(into, -1)
    const met = starts.map(from => stretchesAlong(wood, { from, into: out })).filter(s => s.length > 0)
    if (met.length === 0) return []
    if (bored !== undefined && bores.some(other => opens(other, bored))) return []
    const by = Math.min(...met.map(stretches => stretches[0]!.from.distance))
    const limit = Math.max(...met.map(stretches => stretches.at(-1)!.to.distance))
    return [{ feature, why: 'in-the-way' as const, by, limit }]
  })
}

/** Whether another hole in line with a hole lets its bit through. */
function opens(other: Bored, bored: Bored): boolean {
  if (other === bored || !other.through || other.radius < bored.radius - coincident) return false
  const parallel = length(cross(other.axis.into, bored.axis.into)) <= coincident
  const aside = length(cross(minus(other.axis.from, bored.axis.from), bored.axis.into))
  const before = dot(minus(other.axis.from, bored.axis.from), bored.axis.into) < 0
  return parallel && before && aside <= other.radius - bored.radius + coincident
}

/** As many lines along the flank of a bit find what is in its way. */
const linesRound = 8

function rimOf({ axis, radius }: Bored): readonly Point3[] {
  const { centre, u, v } = circleAbout(axis.from, axis.into, radius)
  const round = Array.from({ length: linesRound }, (_, i) => {
    const turn = (2 * Math.PI * i) / linesRound
    return along(along(centre, u, Math.cos(turn)), v, Math.sin(turn))
  })
  return [centre, ...round]
}

function openingOf({ shape }: Placed, pose: Parameters<typeof toPart>[0]): readonly Point3[] {
  if (shape.kind !== 'pocket') return []
  return chordPoints(shape.region.outer, wallDeviation).map(p => toPart(pose, p))
}
