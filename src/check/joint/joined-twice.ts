import type { FindingOf, Place } from '../../finding/finding.ts'
import type { Target } from '../../model/joint.ts'
import { noLimit, type Rule } from '../rule.ts'

/** A hole or slot that two joints lay claim to. */
export const joinedTwice: Rule<'joined-twice'> = {
  find: ({ model }) => {
    const taken = new Map<string, Target[]>()
    const targets = model.joints.flatMap(joint => (joint.kind === 'pin' ? joint.through : [joint.into]))
    return targets.flatMap(target =>
      target.features.flatMap((feature): FindingOf<'joined-twice'>[] => {
        const key = `${target.part}.${feature}`
        const others = taken.get(key) ?? []
        taken.set(key, others)
        const other = others.find(earlier => sameWood(earlier, target))
        others.push(target)
        if (other === undefined) return []
        return [
          {
            rule: 'joined-twice',
            severity: 'error',
            places: [placeOf(target, feature), placeOf(other, feature)],
            facts: {},
          },
        ]
      }),
    )
  },
  explanation: {
    purpose:
      'One hole takes one pin and one slot one tongue. Where two joints name the same, one of them is meant for another hole or another piece.',
    limit: noLimit,
    origin: 'the plan itself',
  },
}

/** A joint that names no piece is about all of them. */
function sameWood(a: Target, b: Target): boolean {
  return a.piece === undefined || b.piece === undefined || a.piece === b.piece
}

function placeOf({ source, part, piece }: Target, feature: string): Place {
  return { source, part, feature, ...(piece === undefined ? {} : { piece }) }
}
