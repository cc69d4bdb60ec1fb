import type { Place } from '../../finding/finding.ts'
import type { Pin, PinJoint, Target } from '../../model/joint.ts'
import type { Part } from '../../model/part.ts'
import { placeOfFeature } from '../place.ts'
import { type HoleCut, isHole } from '../subject/cut.ts'
import type { PartAtHand, Subject } from '../subject/subject.ts'

/** A hole that a pin goes through, in the part or piece that the joint names. */
export type JointHole = {
  readonly target: Target
  readonly part: Part
  readonly hole: HoleCut
  /** The face that the hole is seen on; back and front are one. */
  readonly face: string
}

/** A pin joint with the holes that each reference leads to, in the order in which the pin goes through them. */
export type HoledJoint = {
  readonly joint: PinJoint
  readonly pin: Pin
  readonly through: readonly (readonly JointHole[])[]
}

/** The pin joints of a plan; holes without a place, and parts that are not drawn, are left out. */
export function pinJoints({ model, parts }: Subject): readonly HoledJoint[] {
  const byId = new Map(parts.map(atHand => [atHand.part.id, atHand]))
  const pins = new Map(model.pins.map(pin => [pin.id, pin]))
  return model.joints.flatMap((joint): HoledJoint[] => {
    if (joint.kind !== 'pin') return []
    const pin = pins.get(joint.pin)
    if (pin === undefined) return []
    return [{ joint, pin, through: joint.through.map(target => holesOf(byId.get(target.part), target)) }]
  })
}

function holesOf(atHand: PartAtHand | undefined, target: Target): readonly JointHole[] {
  if (atHand === undefined) return []
  const holes = new Map<string, JointHole>()
  for (const { face, cuts } of atHand.planes) {
    for (const hole of cuts.filter(isHole)) {
      holes.set(hole.feature.id, { target, part: atHand.part, hole, face: face.id })
    }
  }
  return target.features.flatMap(id => holes.get(id) ?? [])
}

/** Where the joint names the hole, and where the hole is made. */
export function placesOf({ target, part, hole }: JointHole): readonly Place[] {
  const made = placeOfFeature(part, hole.feature)
  const piece = target.piece === undefined ? {} : { piece: target.piece }
  return [{ ...made, ...piece, source: target.source }, made]
}

/** The piece that a joint names, or the part where every piece is meant. */
export function ownerOf({ piece, part }: Target): string {
  return piece ?? part
}
