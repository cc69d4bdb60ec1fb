import type { FindingOf } from '../../finding/finding.ts'
import { distance } from '../../geometry/shape/point.ts'
import type { Pin } from '../../model/joint.ts'
import { coincident, printable } from '../../number/tolerance.ts'
import { mm } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'
import { worstOfEach } from '../worst-of-each.ts'
import { type HoledJoint, type JointHole, ownerOf, pinJoints, placesOf } from './holes.ts'

/** Two parts that are pinned together in several places, which are not as far apart in the one as in the other. */
export const pinHolesApart: Rule<'pin-holes-apart'> = {
  find: subject => groups(pinJoints(subject)).flatMap(misplaced),
  explanation: {
    purpose:
      'A hole that is wanted in two parts is wanted at the same place in both. Where two parts share two pins, the holes have to be as far apart in the one as in the other, or the second pin does not go in.',
    limit: () => 'what the pins give way in their holes, and at least what can be printed',
    origin: commonPractice,
  },
}

/** A hole in one part and the hole in another one that the same pin goes through. */
type Pairing = { readonly pin: Pin; readonly a: JointHole; readonly b: JointHole }

/** Each hole is held against so many others of the same two parts; three of them pin down a pattern. */
const mostOthers = 3

/** The pairings by the two pieces and the faces that the holes are seen on. */
function groups(joints: readonly HoledJoint[]): readonly (readonly Pairing[])[] {
  const found = new Map<string, Pairing[]>()
  for (const { pin, through } of joints) {
    through.forEach((holes, i) => {
      const next = through[i + 1]
      if (next === undefined || next.length !== holes.length) return
      holes.forEach((a, k) => {
        const b = next[k]!
        const key = [ownerOf(a.target), a.face, ownerOf(b.target), b.face].join(' ')
        const group = found.get(key) ?? []
        found.set(key, group)
        group.push({ pin, a, b })
      })
    })
  }
  return [...found.values()]
}

/** Of a row that is spaced otherwise, every hole is off for one reason: the first that is off is told of. */
function misplaced(pairings: readonly Pairing[]): readonly FindingOf<'pin-holes-apart'>[] {
  const found = pairings.flatMap((pairing, i) => {
    const finding = firstThatDiffers(pairing, pairings.slice(0, Math.min(i, mostOthers)))
    return finding === undefined ? [] : [{ pairing, finding }]
  })
  const ofEachRow = worstOfEach(
    found,
    ({ pairing: { a, b } }) => `${a.hole.feature.cut} ${b.hole.feature.cut}`,
    () => 0,
  )
  return ofEachRow.map(({ worst }) => worst.finding)
}

function firstThatDiffers(
  pairing: Pairing,
  others: readonly Pairing[],
): FindingOf<'pin-holes-apart'> | undefined {
  for (const other of others) {
    const one = distance(pairing.a.hole.centre, other.a.hole.centre)
    const another = distance(pairing.b.hole.centre, other.b.hole.centre)
    const limit = Math.max(printable, play(pairing) + play(other))
    if (Math.abs(one - another) <= limit + coincident) continue
    return {
      rule: 'pin-holes-apart',
      severity: 'error',
      places: [...placesOf(pairing.a), placesOf(pairing.b)[1]!],
      measured: mm(Math.abs(one - another)),
      limit: mm(limit),
      facts: { pin: pairing.pin.id, from: other.a.hole.feature.id, one: mm(one), another: mm(another) },
    }
  }
  return undefined
}

/** How far the two holes may be off each other and the pin still goes through both. */
function play({ pin, a, b }: Pairing): number {
  if (pin.diameter === 'unknown') return 0
  return Math.max(0, a.hole.radius + b.hole.radius - pin.diameter.mm)
}
