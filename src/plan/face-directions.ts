import { type DistanceFrom, type FaceName, isSide } from '../finding/face-name.ts'
import type { Side } from '../finding/side.ts'

/** The two sides that a distance in one direction of a face can be taken from, the one at its zero first. */
export type Direction = readonly [DistanceFrom, DistanceFrom]

/** Every face has two directions, and `at` gives one distance in each. */
export type FaceDirections = { readonly along: Direction; readonly across: Direction }

const leftRight: Direction = ['left', 'right']
const bottomTop: Direction = ['bottom', 'top']
const frontBack: Direction = ['front', 'back']

const ofSides: Readonly<Record<Side, FaceDirections>> = {
  front: { along: leftRight, across: bottomTop },
  back: { along: leftRight, across: bottomTop },
  top: { along: leftRight, across: frontBack },
  bottom: { along: leftRight, across: frontBack },
  left: { along: frontBack, across: bottomTop },
  right: { along: frontBack, across: bottomTop },
}

const ofNamedEdge: FaceDirections = { along: ['start', 'end'], across: frontBack }

export function faceDirections(face: FaceName): FaceDirections {
  return isSide(face) ? ofSides[face] : ofNamedEdge
}
