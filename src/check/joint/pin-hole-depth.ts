import type { FindingOf } from '../../finding/finding.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Workshop } from '../../workshop/workshop.ts'
import { mm } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'
import type { HoleCut } from '../subject/cut.ts'
import { type HoledJoint, type JointHole, pinJoints, placesOf } from './holes.ts'

/** Holes that together are not as deep as the pin in them is long, or much deeper. */
export const pinHoleDepth: Rule<'pin-hole-depth'> = {
  find: subject => pinJoints(subject).flatMap(joint => judge(joint, subject.workshop)),
  explanation: {
    purpose:
      'A dowel that is longer than its two holes keeps the joint open; one that is much shorter holds nothing. A pin that goes right through and is too short does not come out on the other side. A rod that bridges a gap, far longer than its holes, is left alone.',
    limit: ({ fits }, show) =>
      `the depths together are the pin's length; a dowel that is glued has ${show(fits.dowelSpare)} to spare, and no more than twice that`,
    origin: commonPractice,
  },
}

/** A pin longer than its holes by more than this share of them bridges a gap: a rail between two posts. */
const bridge = 1 / 2

function judge(
  { joint, pin, through }: HoledJoint,
  { fits }: Workshop,
): readonly FindingOf<'pin-hole-depth'>[] {
  if (pin.length === undefined || pin.length === 'unknown') return []
  const chain = through.map(([hole]) => hole).filter(hole => hole !== undefined)
  const [first, last] = [chain[0], chain.at(-1)]
  if (chain.length !== joint.through.length || first === undefined || last === undefined) return []
  const length = pin.length.mm
  const depth = chain.reduce((sum, { hole }) => sum + alongAxis(hole), 0)
  const make = (
    fault: 'shallow' | 'deep' | 'short-pin',
    limit: number,
    severity: 'error' | 'warning',
  ): FindingOf<'pin-hole-depth'> => ({
    rule: 'pin-hole-depth',
    severity,
    places: [{ ...placesOf(first)[0], source: joint.source }, ...chain.map(hole => placesOf(hole)[1]!)],
    measured: mm(depth),
    limit: mm(limit),
    facts: { pin: pin.id, fault, length: mm(length) },
  })

  if (!isStopped(first) || !isStopped(last) || chain.length < 2) {
    return depth > length + coincident ? [make('short-pin', length, 'warning')] : []
  }
  if (length - depth > bridge * depth) return []
  if (depth < length - coincident) return [make('shallow', length, 'error')]
  const glued = chain.some(({ hole }) => hole.bore.for?.fit === 'glue')
  const wanted = length + (glued ? fits.dowelSpare : 0)
  if (depth < wanted - coincident) return [make('shallow', wanted, 'warning')]
  const most = length + 2 * fits.dowelSpare
  return depth > most + coincident ? [make('deep', most, 'warning')] : []
}

/** How long a hole is for the pin that lies in it. */
function alongAxis({ bore, from, to }: HoleCut): number {
  if (bore.depth !== 'through') return bore.depth.mm
  return (to - from) / Math.cos(bore.lean?.angle ?? 0)
}

function isStopped({ hole }: JointHole): boolean {
  return hole.bore.depth !== 'through'
}
